import type { SetSource } from "./set-source.ts";

/** The head of the record and the key that signed it, by their first signs; whole on the last sheet of the record. */
export const headWords = ({ record }: Pick<SetSource, "record">, signs: number): string =>
  record.signed === null
    ? `head ${record.head.slice(0, signs)}… not signed`
    : `head ${record.head.slice(0, signs)}… key ${record.signed.fingerprint.slice(0, signs)}…`;
