import {
  mayReadEntry,
  recordKinds,
  type RecordEntry,
  type RecordKind,
  type Digest,
  type SignedHead,
} from "@cornerway/schema";
import { signHead } from "../../record/sign-head.ts";
import { readKeyAt } from "../../record/signing-key.ts";
import { verificationSummary } from "../../permit-set/verification-summary.ts";
import type { SetSource } from "../../permit-set/set-source.ts";
import { statusOf } from "../../permit-set/status.ts";
import { readLatestRun } from "../../store/assessment-rows.ts";
import type { Connection } from "../../store/connection.ts";
import { readProjectRow } from "../../store/project-rows.ts";
import { readReport, readWorkings } from "../../store/proof-rows.ts";
import { readEntries, readHead } from "../../store/record-rows.ts";
import { readRevision, readRevisionSummaries } from "../../store/revision-rows.ts";
import { authorityIn } from "../plan-check/authority.ts";
import { readCommentsUpTo } from "../plan-check/read-register.ts";
import { sheetWallsChosen } from "./sheet-walls-chosen.ts";

export interface WhichSet {
  projectId: string;
  letter: string;
  units: "SI" | "US";
  upTo: number;
}

const mostRevisions = 500;
const mostEntries = 100_000;

/**
 * All that the set of a revision is printed from, by the record up to one head; null where the revision has no
 * assessment that can be read. Who has which part, and the comments, are those of that head.
 */
export async function gatherSource(
  db: Connection,
  which: WhichSet,
  secretsKey: string | undefined,
): Promise<SetSource | null> {
  const { projectId, letter, units, upTo } = which;
  const revision = await readRevision(db, projectId, letter);
  if (revision === null || revision.result === null || revision.resultDigest === null) return null;
  const { contentDigest, resultDigest } = revision;
  const { attempt } = await readLatestRun(db, projectId, letter);
  const key = { projectId, letter, attempt };
  const report = await readReport(db, key);
  const { id, name, place, client } = await readProjectRow(db, projectId);
  const kinds = recordKinds.filter((kind: RecordKind) => mayReadEntry(["reader"], kind));
  const all = await readEntries(db, projectId, { after: 0, limit: mostEntries, kinds });
  const entries = all.filter(({ number }) => number <= upTo);
  const head = await readHead(db, projectId, upTo);
  const summaries = await readRevisionSummaries(db, projectId, { before: undefined, limit: mostRevisions });
  const oldestFirst = summaries.toReversed();
  const upToThis = oldestFirst.slice(0, oldestFirst.findIndex((each) => each.letter === letter) + 1);
  return {
    units,
    project: { id, name, place, client },
    parties: partiesOf(entries),
    revision: {
      ...{ letter, sentAt: revision.sentAt, sentBy: revision.sentBy.name },
      ...{ remark: revision.remark, contentDigest },
    },
    revisions: upToThis.map(({ letter: each, sentAt, sentBy, remark }) => ({
      ...{ letter: each, sentAt, sentBy: sentBy.name, remark },
    })),
    earlier: await printedEarlier(db, projectId, entries, { letter, letters: upToThis.map((each) => each.letter) }),
    authority: authorityIn(entries),
    scheme: revision.scheme,
    sheetWallsChosen: await sheetWallsChosen(db, projectId, draftSent(entries, letter)),
    assessment: revision.result,
    resultDigest,
    proof: report === null ? null : { report, workings: await readWorkings(db, key) },
    record: { ...head, entries, signed: await headSignedThen(db, { ...head, project: projectId }, secretsKey) },
    comments: await readCommentsUpTo(db, projectId, upTo),
    status: statusOf({ letter, scheme: revision.scheme, entries, contentDigest, resultDigest }),
    verification: verificationSummary(),
  };
}

/** Number of the draft that was sent as a revision. */
function draftSent(entries: readonly RecordEntry[], letter: string): number {
  for (const { payload } of entries)
    if (payload?.kind === "revision sent" && payload.letter === letter) return payload.draftNumber;
  throw new Error(`draftSent: the record does not say that revision ${letter} was sent`);
}

/** Earlier revisions of which sets were printed, by the record up to the head, each once at its last set, the oldest first. */
async function printedEarlier(
  db: Connection,
  projectId: string,
  entries: readonly RecordEntry[],
  { letter, letters }: { letter: string; letters: readonly string[] },
): Promise<SetSource["earlier"]> {
  const known = new Set(letters.filter((each) => each !== letter));
  const printed = entries.flatMap(({ payload }) =>
    payload?.kind === "set printed" && known.has(payload.letter) ? [payload.letter] : [],
  );
  const lastOfEach = [...new Set(printed.toReversed())].toReversed();
  const revisions = [];
  for (const each of lastOfEach) revisions.push(await readRevision(db, projectId, each));
  return revisions.flatMap((each) => (each === null ? [] : [{ letter: each.letter, scheme: each.scheme }]));
}

/**
 * The head signed by the key that was in force when its entry was written, for that time: printed again, it is the same
 * to the last byte.
 */
async function headSignedThen(
  db: Connection,
  { project, number, head, at: time }: { project: string; number: number; head: Digest; at: string },
  secretsKey: string | undefined,
): Promise<SignedHead | null> {
  const key = secretsKey === undefined ? null : await readKeyAt(db, secretsKey, time);
  return key === null ? null : signHead({ project, number, head, time }, key);
}

/** Who holds a part once all these entries have happened. */
function partiesOf(entries: readonly RecordEntry[]): { role: string; name: string }[] {
  const held = new Map<string, { role: string; name: string }>();
  for (const { payload } of entries) {
    switch (payload?.kind) {
      case "role given":
        held.set(`${payload.role}|${payload.personName}`, { role: payload.role, name: payload.personName });
        break;
      case "role removed":
      case "role expired":
        held.delete(`${payload.role}|${payload.personName}`);
        break;
      default:
    }
  }
  return [...held.values()];
}
