import type { Scheme } from "../scheme.ts";
import { elementsOf, tagOf } from "../scheme-collections.ts";

/** The tag of every element of a scheme that has one, by its id. */
export const elementNames = (scheme: Scheme): Map<string, string> =>
  new Map(elementsOf(scheme).flatMap((element) => pairOf(element.id, tagOf(element))));

const pairOf = (id: string, tag: string | undefined): [string, string][] => (tag === undefined ? [] : [[id, tag]]);
