import { BroughtIn, type ToldEntry } from "@cornerway/schema";
import { isKeyChain } from "./record-key.ts";
import { isHeadSigned } from "./sign-head.ts";
import { headOver } from "./tree-proofs.ts";

/** Where a part of a record was brought in from, as its entry says. */
export interface BroughtPart extends BroughtIn {
  number: number;
}

/** What is brought in, by the entries that say so and that are opened. */
export const broughtParts = (told: readonly ToldEntry[]): BroughtPart[] =>
  told.flatMap(({ kind, number, opened }) => {
    if (kind !== "brought in" || opened === null) return [];
    const { kind: _kind, ...said } = opened.payload;
    const read = BroughtIn.safeParse(said);
    return read.success ? [{ ...read.data, number }] : [];
  });

/** Holds an entry that says so against the record before it: the head there, and who signed it. */
export function broughtInFaults(parts: readonly BroughtPart[], project: string, leaves: readonly string[]): string[] {
  return parts.flatMap(({ number, upTo, head, keys }) => {
    const fault = (words: string) => [`entry ${number}: ${words}`];
    if (upTo !== number - 1 || head.number !== upTo || head.project !== project)
      return fault("says it brings in what is not before it");
    if (headOver(leaves, upTo) !== head.head)
      return fault("the entries before it do not lead to the head they came with");
    const signer = keys.at(-1);
    if (!isKeyChain(keys) || signer === undefined || signer.fingerprint !== head.fingerprint)
      return fault("the keys of what is brought in do not follow one another");
    return isHeadSigned(head, signer.publicKey) ? [] : fault("the signature of what is brought in does not hold");
  });
}
