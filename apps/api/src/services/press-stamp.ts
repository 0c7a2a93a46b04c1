import {
  answeredMarks,
  stampRefusals,
  stampRefusalSentence,
  type NewStamp,
  type RevisionSummary,
  type Stamp,
} from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { readResult } from "../store/assessment-rows.ts";
import { readNotesOnMarks } from "../store/note-rows.ts";
import { countOpenRequests } from "../store/request-rows.ts";
import { readRevisionHeads, summaryOf } from "../store/revision-rows.ts";
import { findStamp, insertStamp } from "../store/stamp-rows.ts";
import { actOf } from "./act-of.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { authorOf, type Part } from "./part.ts";

/** The engineer's disposition of the latest revision, bound to the content and the result on the engineer's screen. */
export async function pressStamp(database: Database, sender: Part, body: NewStamp): Promise<Outcome<Stamp>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "press-stamp", async (tx, part) => {
    const earlier = await findStamp(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.stamp) : refuse("id-reused");
    const refused = await refusalOf(tx, projectId, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "press-stamp");
    const stampAt = (at: string): Stamp => ({ ...body, author, pressedAt: at });
    const { at } = await append(tx, projectId, author, (entry) => ({
      kind: "stamp pressed",
      stamp: stampAt(entry.at),
    }));
    await insertStamp(tx, projectId, stampAt(at), bodyDigest);
    return done(stampAt(at));
  });
}

async function refusalOf(tx: Connection, projectId: string, body: NewStamp): Promise<Outcome<never> | undefined> {
  const heads = await readRevisionHeads(tx, projectId);
  const head = heads.find(({ letter }) => letter === body.revision);
  if (head === undefined) return refuseField("body-invalid", "/revision", "there is no such revision");
  const newest = heads[0];
  if (newest !== undefined && newest !== head)
    return refuse("revision-superseded", { detail: `revision ${newest.letter} is newer` });
  const revision = await summaryOf(tx, projectId, head);
  if (revision.stamp !== null) return refuse("already-answered", { detail: `revision ${revision.letter} is stamped` });
  if (revision.resultDigest === null)
    return refuse("assessment-pending", { detail: `the assessment is ${revision.assessment}` });
  if (revision.contentDigest !== body.contentDigest)
    return refuseField("digest-mismatch", "/contentDigest", "not that revision's");
  if (revision.resultDigest !== body.resultDigest)
    return refuseField("digest-mismatch", "/resultDigest", "not that revision's");
  return notOpen(tx, projectId, revision, body);
}

/** What stands in the way of letting work go on, all of it in one sentence after the other. */
async function notOpen(
  tx: Connection,
  projectId: string,
  { letter }: RevisionSummary,
  { disposition }: NewStamp,
): Promise<Outcome<never> | undefined> {
  const { result } = await readResult(tx, projectId, letter);
  if (result === null) return refuse("assessment-pending", { detail: "the answer cannot be read" });
  const answered = answeredMarks(await readNotesOnMarks(tx, projectId, letter), letter);
  const openRequests = await countOpenRequests(tx, projectId);
  const refusals = stampRefusals(disposition, { result, answered, openRequests });
  if (refusals.length === 0) return undefined;
  return refuse("stamp-not-open", { detail: refusals.map(stampRefusalSentence).join(" ") });
}
