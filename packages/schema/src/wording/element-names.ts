import type { Scheme } from "../scheme.ts";

/** The tag of every element of a scheme by its id. */
export const elementNames = ({ containers, openings, posts, pads }: Scheme): Map<string, string> =>
  new Map([...containers, ...openings, ...posts, ...pads].map(({ id, tag }) => [id, tag]));
