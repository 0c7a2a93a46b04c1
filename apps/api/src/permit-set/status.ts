import type { SetSource } from "./set-source.ts";

/** What stands on every page: it is never the program that makes a set valid. */
export const statusLine = ({ issuedForSeal }: Pick<SetSource, "issuedForSeal">): string =>
  issuedForSeal === null ? "PRELIMINARY. NOT FOR CONSTRUCTION" : "Not valid without the seal of the engineer of record";
