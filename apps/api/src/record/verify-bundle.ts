import { canonicalJson, pointerTo, RecordBundle, type BundleEntry, type RecordKey } from "@cornerway/schema";
import { entryLeaf, payloadDigest } from "./entry-leaf.ts";
import { bundleStatement } from "./make-bundle.ts";
import { isKeyChain, isSigned } from "./record-key.ts";
import { isHeadSigned } from "./sign-head.ts";
import { headOver } from "./tree-proofs.ts";

/** What someone knows from outside the bundle: a key's fingerprint, or a head they were given earlier. */
export type KnownOutside = {
  readonly fingerprint?: string;
  readonly head?: { readonly number: number; readonly head: string };
};

export type BundleFinding =
  | {
      readonly whole: true;
      /** True only when something from outside ties the bundle to its origin. */
      readonly originProved: boolean;
      readonly bundle: RecordBundle;
      readonly withheld: number;
    }
  | { readonly whole: false; readonly faults: readonly string[] };

/**
 * Checks a bundle by itself: that its bytes are its RFC 8785 form, that entries run from 1 without a gap and in time, that
 * what is opened has the digest its entry states, that the head over all leaves is the one signed, and that key chain and
 * signatures hold. Whoever rebuilds all of it with another key passes all of that: only what is known from outside shows
 * where it comes from.
 */
export function verifyBundle(text: string, known: KnownOutside): BundleFinding {
  const read = readBundle(text);
  if (!read.ok) return { whole: false, faults: read.faults };
  const { bundle } = read;
  const leaves = bundle.entries.map((entry) => leafOf(bundle.project, entry));
  const faults = [
    ...formFaults(text, bundle),
    ...entryFaults(bundle.entries),
    ...headFaults(bundle, leaves),
    ...keyFaults(bundle),
    ...outsideFaults(bundle, leaves, known),
  ];
  if (faults.length > 0) return { whole: false, faults };
  const withheld = bundle.entries.filter(({ opened }) => opened === null).length;
  return { whole: true, originProved: known.fingerprint !== undefined || known.head !== undefined, bundle, withheld };
}

function readBundle(text: string): { ok: true; bundle: RecordBundle } | { ok: false; faults: string[] } {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return { ok: false, faults: [`it is not JSON: ${error instanceof Error ? error.message : String(error)}`] };
  }
  const parsed = RecordBundle.safeParse(value);
  if (parsed.success) return { ok: true, bundle: parsed.data };
  return { ok: false, faults: parsed.error.issues.map(({ path, message }) => `${pointerTo(path)}: ${message}`) };
}

const formFaults = (text: string, bundle: RecordBundle): string[] =>
  canonicalJson(bundle) === text ? [] : ["its bytes are not the canonical form of what it says"];

const leafOf = (project: string, { number, time, actor, role, kind, digest }: BundleEntry): string =>
  entryLeaf({ project, number, time, actor, role, kind, digest });

function entryFaults(entries: readonly BundleEntry[]): string[] {
  return entries.flatMap((entry, at) => {
    const before = entries[at - 1];
    if (entry.number !== at + 1) return [`entry ${at + 1}: bears the number ${entry.number}`];
    if (before !== undefined && before.time > entry.time)
      return [`entry ${entry.number}: is earlier than the one before`];
    if (entry.opened === null) return [];
    const { salt, payload, token } = entry.opened;
    if (payload.kind !== entry.kind) return [`entry ${entry.number}: what is opened is of another kind`];
    return payloadDigest(payload, salt, token) === entry.digest
      ? []
      : [`entry ${entry.number}: what is opened is not what was recorded`];
  });
}

function headFaults({ project, head, entries }: RecordBundle, leaves: readonly string[]): string[] {
  if (head.project !== project) return ["the signed head is of another project"];
  if (head.number !== entries.length)
    return [`the signed head is over ${head.number} entries, here are ${entries.length}`];
  return head.head === headOver(leaves) ? [] : ["the entries do not lead to the signed head"];
}

function keyFaults({ signature, ...unsigned }: RecordBundle): string[] {
  const { keys, head } = unsigned;
  if (!isKeyChain(keys)) return ["the keys do not follow one another"];
  const signer: RecordKey | undefined = keys.at(-1);
  if (signer === undefined || signer.fingerprint !== head.fingerprint)
    return ["the head is signed by a key that is not the last one"];
  if (!isHeadSigned(head, signer.publicKey)) return ["the signature of the head does not hold"];
  return isSigned(bundleStatement(unsigned), signature, signer.publicKey)
    ? []
    : ["the signature of the bundle does not hold"];
}

function outsideFaults(
  { keys }: RecordBundle,
  leaves: readonly string[],
  { fingerprint, head }: KnownOutside,
): string[] {
  const unknownKey = fingerprint !== undefined && !keys.some((key) => key.fingerprint === fingerprint);
  const otherHead = head !== undefined && (head.number > leaves.length || headOver(leaves, head.number) !== head.head);
  return [
    ...(unknownKey ? ["no key of it has the fingerprint that was expected"] : []),
    ...(otherHead ? [`the record up to ${head.number} is not the one whose head is known`] : []),
  ];
}
