import {
  mayReadEntry,
  recordKinds,
  type ConsistencyProof,
  type InclusionProof,
  type SignedHead,
} from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { makeBundle } from "../record/make-bundle.ts";
import { signHead } from "../record/sign-head.ts";
import { KeyLost, readSigner, type Signer } from "../record/signing-key.ts";
import { consistencyProof, inclusionProof } from "../record/tree-proofs.ts";
import { readBroughtIn } from "../store/brought-in-rows.ts";
import type { Connection } from "../store/connection.ts";
import { readProjectRow } from "../store/project-rows.ts";
import { findLeaf, readBundleEntries, readLeaves } from "../store/proved-entries.ts";
import { lastNumber, readHead } from "../store/record-rows.ts";
import type { Part } from "./part.ts";

/** Whose record is proved, and by which signer. */
type Proving = { db: Connection; part: Part; signer: Signer };

/**
 * The tree head over entries 1 to `number`, the last one unless said, signed now. Of a part that was brought in only the
 * head it came with is given, as it was signed there.
 */
export async function signedHead({ db, part, signer }: Proving, number?: number): Promise<Outcome<SignedHead>> {
  const last = (await lastNumber(db, part.projectId)) ?? 0;
  if (number !== undefined && number > last) return refuse("not-found", { detail: `the record ends at ${last}` });
  const broughtIn = number === undefined ? null : await readBroughtIn(db, part.projectId);
  if (broughtIn !== null && number !== undefined && number < broughtIn.number)
    return number === broughtIn.upTo ? done(broughtIn.head) : refuse("signed-elsewhere");
  const { head } = await readHead(db, part.projectId, number ?? last);
  return done(signNow(part.projectId, { number: number ?? last, head }, signer));
}

const signNow = (project: string, at: { number: number; head: string }, { key }: Signer): SignedHead =>
  signHead({ project, ...at, time: new Date().toISOString() }, key);

/** Shows an entry to be in the record as it stands. One that the roles may not see is not there. */
export async function proveEntry(proving: Proving, number: number): Promise<Outcome<InclusionProof>> {
  const { db, part } = proving;
  const found = await findLeaf(db, part.projectId, number);
  const isSeen = recordKinds.some((kind) => kind === found?.kind && mayReadEntry(part.roles, kind));
  if (found === null || !isSeen) return refuse("not-found");
  const head = await signedHead(proving);
  if (!head.ok) return head;
  const leaves = await readLeaves(db, part.projectId, head.value.number);
  return done({ number, leaf: found.leaf, proof: inclusionProof(leaves, number - 1), head: head.value });
}

/** Shows the head over entries 1 to `to`, the last one unless said, to continue the one over 1 to `from`. */
export async function proveContinuation(
  proving: Proving,
  { from, to }: { from: number; to?: number | undefined },
): Promise<Outcome<ConsistencyProof>> {
  const head = await signedHead(proving, to);
  if (!head.ok) return head;
  const { number } = head.value;
  if (from > number) return refuseField("body-invalid", "/querystring/from", `at most ${number}`);
  const leaves = await readLeaves(proving.db, proving.part.projectId, number);
  return done({ from, proof: consistencyProof(leaves, from), head: head.value });
}

/** The whole record as one signed file, opened as far as the roles may see. */
export async function bundleOf(proving: Proving): Promise<Outcome<{ text: string; number: number }>> {
  const { db, part, signer } = proving;
  const { projectId: project, roles } = part;
  const head = await signedHead(proving);
  if (!head.ok) return head;
  const kinds = recordKinds.filter((kind) => mayReadEntry(roles, kind));
  const entries = await readBundleEntries(db, project, { upTo: head.value.number, kinds });
  const { name } = await readProjectRow(db, project);
  const recorded = { project, name, entries, head: head.value.head, time: head.value.time };
  return done({ text: makeBundle(recorded, signer.keys, signer.key), number: head.value.number });
}

/** The same for whoever may be asked with or without a key: a service without one signs nothing. */
export async function withSigner<T>(
  { db, part, secretsKey }: { db: Connection; part: Part; secretsKey: string | undefined },
  work: (proving: Proving) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const signer = await signerFor(db, secretsKey);
  return signer.ok ? work({ db, part, signer: signer.value }) : signer;
}

/** Who signs here; refused where nothing can be signed. */
export async function signerFor(db: Connection, secretsKey: string | undefined): Promise<Outcome<Signer>> {
  if (secretsKey === undefined) return refuse("signing-off");
  try {
    return done(await readSigner(db, secretsKey));
  } catch (error) {
    if (error instanceof KeyLost) return refuse("signing-off", { detail: error.message });
    throw error;
  }
}
