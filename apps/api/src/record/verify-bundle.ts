import {
  canonicalJson,
  pointerTo,
  RecordBundle,
  type BundleEntry,
  type RecordKey,
  type SignedHead,
  type ToldEntry,
} from "@cornerway/schema";
import { broughtInFaults, broughtParts, type BroughtPart } from "./brought-in-faults.ts";
import { entryLeaf, payloadDigest } from "./entry-leaf.ts";
import { bundleStatement } from "./make-bundle.ts";
import { isKeyChain, isSigned } from "./record-key.ts";
import { isHeadSigned } from "./sign-head.ts";
import { headOver } from "./tree-proofs.ts";

/** What someone knows from outside the bundle: a key's fingerprint, or a head they were given earlier, signed or not. */
export type KnownOutside = {
  readonly fingerprint?: string;
  readonly head?: { readonly number: number; readonly head: string } | SignedHead;
};

export type BundleFinding =
  | {
      readonly whole: true;
      /** True only when something from outside ties the bundle to its origin. */
      readonly originProved: boolean;
      readonly bundle: RecordBundle;
      readonly withheld: number;
      /** Parts that were signed elsewhere and brought in. */
      readonly broughtIn: readonly BroughtPart[];
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
    ...broughtInFaults(broughtParts(toldOf(bundle)), bundle.project, leaves),
    ...outsideFaults(bundle, leaves, known),
  ];
  if (faults.length > 0) return { whole: false, faults };
  const withheld = bundle.entries.filter((entry) => "leaf" in entry || entry.opened === null).length;
  const originProved = known.fingerprint !== undefined || known.head !== undefined;
  return { whole: true, originProved, bundle, withheld, broughtIn: broughtParts(toldOf(bundle)) };
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

const toldOf = ({ entries }: RecordBundle): ToldEntry[] => entries.flatMap((entry) => ("leaf" in entry ? [] : [entry]));

const formFaults = (text: string, bundle: RecordBundle): string[] =>
  canonicalJson(bundle) === text ? [] : ["its bytes are not the canonical form of what it says"];

function leafOf(project: string, entry: BundleEntry): string {
  if ("leaf" in entry) return entry.leaf;
  const { number, time, actor, role, kind, digest } = entry;
  return entryLeaf({ project, number, time, actor, role, kind, digest });
}

function entryFaults(entries: readonly BundleEntry[]): string[] {
  const misplaced = entries.findIndex(({ number }, at) => number !== at + 1);
  if (misplaced >= 0) return [`entry ${misplaced + 1}: bears the number ${entries[misplaced]?.number}`];
  const told = entries.flatMap((entry) => ("leaf" in entry ? [] : [entry]));
  return told.flatMap((entry, at) => toldFaults(entry, told[at - 1]));
}

function toldFaults({ number, time, kind, digest, opened }: ToldEntry, before: ToldEntry | undefined): string[] {
  if (before !== undefined && before.time > time) return [`entry ${number}: is earlier than the one before`];
  if (opened === null) return [];
  const { salt, payload, token } = opened;
  if (payload.kind !== kind) return [`entry ${number}: what is opened is of another kind`];
  return payloadDigest(payload, salt, token) === digest
    ? []
    : [`entry ${number}: what is opened is not what was recorded`];
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

function outsideFaults(bundle: RecordBundle, leaves: readonly string[], { fingerprint, head }: KnownOutside): string[] {
  const unknownKey = fingerprint !== undefined && !bundle.keys.some((key) => key.fingerprint === fingerprint);
  const otherHead = head !== undefined && (head.number > leaves.length || headOver(leaves, head.number) !== head.head);
  return [
    ...(unknownKey ? ["no key of it has the fingerprint that was expected"] : []),
    ...(otherHead ? [`the record up to ${head.number} is not the one whose head is known`] : []),
    ...(head !== undefined && "signature" in head ? signedHeadFaults(bundle, head) : []),
  ];
}

function signedHeadFaults({ project, keys }: RecordBundle, head: SignedHead): string[] {
  if (head.project !== project) return ["the head that is known is of another project"];
  const signer = keys.find(({ fingerprint }) => fingerprint === head.fingerprint);
  if (signer === undefined) return ["the head that is known is signed by a key that is not among its keys"];
  return isHeadSigned(head, signer.publicKey) ? [] : ["the signature of the head that is known does not hold"];
}
