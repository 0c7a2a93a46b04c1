/** An id for a new element: the letter of its kind and 60 random bits, so that two people never make the same one. */
export const newElementId = (letter: string): string =>
  `${letter}-${crypto.randomUUID().replaceAll("-", "").slice(0, 15)}`;
