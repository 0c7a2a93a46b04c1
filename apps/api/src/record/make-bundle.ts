import { canonicalJson, type BundleEntry, type RecordBundle, type RecordKey } from "@cornerway/schema";
import { signed, type SigningKey } from "./record-key.ts";
import { signHead } from "./sign-head.ts";

type Recorded = { project: string; name: string; entries: readonly BundleEntry[]; head: string; time: string };

/** A record as one signed file: its RFC 8785 form. `keys` is the whole chain, oldest first; the last one signs. */
export function makeBundle(
  { project, name, entries, head, time }: Recorded,
  keys: readonly RecordKey[],
  key: SigningKey,
): string {
  const unsigned: Omit<RecordBundle, "signature"> = {
    ...{ bundle: 1, project, name, entries: [...entries], keys: [...keys] },
    head: signHead({ project, number: entries.length, head, time }, key),
  };
  return canonicalJson({ ...unsigned, signature: signed(bundleStatement(unsigned), key.privateKey) });
}

/** What the signature of a bundle is over. */
export const bundleStatement = (unsigned: Omit<RecordBundle, "signature">) => ({ ...unsigned, what: "record bundle" });
