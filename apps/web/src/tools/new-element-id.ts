import { newUuid } from "./new-uuid.ts";

/** An id for a new element: the letter of its kind and 56 random bits, so that two people never make the same one. */
export const newElementId = (letter: string): string => `${letter}-${newUuid().replaceAll("-", "").slice(0, 15)}`;
