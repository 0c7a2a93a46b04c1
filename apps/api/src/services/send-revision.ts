import type { Digest, NewRevision, RevisionSummary } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { addAssessment } from "../queue/add-assessment.ts";
import { append } from "../record/append.ts";
import { insertRun } from "../store/assessment-rows.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { readActsAfter, readDraft, type DraftRow } from "../store/draft-rows.ts";
import { insertRevision, readRevisionHeads, summaryOf, type RevisionHead } from "../store/revision-rows.ts";
import { actOf } from "./act-of.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { authorOf, type Part } from "./part.ts";
import { revisionLetter } from "./revision-letter.ts";

/**
 * Freezes the draft as the next lettered revision, when what is on the architect's screen is what is here. It answers
 * at once; the server's own assessment is put in the queue.
 */
export async function sendRevision(
  database: Database,
  sender: Part,
  body: NewRevision,
): Promise<Outcome<RevisionSummary>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "send-revision", async (tx, part) => {
    const heads = await readRevisionHeads(tx, projectId);
    const earlier = heads.find(({ id }) => id === body.id);
    if (earlier !== undefined)
      return earlier.bodyDigest === bodyDigest ? done(await summaryOf(tx, projectId, earlier)) : refuse("id-reused");
    const draft = await readDraft(tx, projectId);
    const refused = await refusalOf(tx, projectId, { body, draft, latest: heads[0] });
    return refused ?? (await freeze(tx, part, { body, draft, bodyDigest, ordinal: heads.length + 1 }));
  });
}

async function freeze(
  tx: Connection,
  part: Part,
  { body, draft, bodyDigest, ordinal }: { body: NewRevision; draft: DraftRow; bodyDigest: Digest; ordinal: number },
): Promise<Outcome<RevisionSummary>> {
  const { projectId } = part;
  const author = authorOf(part, "send-revision");
  const letter = revisionLetter(ordinal);
  const { number: draftNumber, contentDigest, scheme } = draft;
  const { id, remark } = body;
  const payload = { letter, contentDigest, draftNumber, remark };
  const { at } = await append(tx, projectId, author, () => ({ kind: "revision sent", ...payload }));
  const containerCount = scheme.containers.length;
  const sent = { id, ordinal, letter, draftNumber, contentDigest, scheme, containerCount, remark, author };
  await insertRevision(tx, projectId, { ...sent, sentAt: at, bodyDigest });
  const run = { projectId, letter, attempt: 1 };
  await insertRun(tx, run, { askedBy: null, askedAt: at });
  await addAssessment(tx, run);
  const unanswered = { resultDigest: null, verdict: "not checked", assessment: "waiting", stamp: null } as const;
  return done({ letter, contentDigest, sentAt: at, sentBy: author, remark, ...unanswered });
}

async function refusalOf(
  tx: Connection,
  projectId: string,
  { body, draft, latest }: { body: NewRevision; draft: DraftRow; latest: RevisionHead | undefined },
): Promise<Outcome<never> | undefined> {
  if (body.draftNumber > draft.number) return refuse("draft-base-ahead", { detail: `the draft is at ${draft.number}` });
  if (body.contentDigest !== draft.contentDigest) return mismatch(tx, projectId, body, draft);
  if (draft.scheme.containers.length === 0) return refuse("nothing-drawn");
  if (latest?.contentDigest === draft.contentDigest) return refuse("revision-unchanged");
  return undefined;
}

const mostShown = 20;

/** The difference between the screen and the draft: what was drawn after the number on the screen. */
async function mismatch(
  tx: Connection,
  projectId: string,
  body: NewRevision,
  draft: DraftRow,
): Promise<Outcome<never>> {
  const acts = await readActsAfter(tx, projectId, { after: body.draftNumber, limit: mostShown });
  return refuse("digest-mismatch", {
    conflict: {
      draftNumber: draft.number,
      elements: [...new Set(acts.flatMap(({ writes }) => writes))],
      theirs: acts.map(({ number, personName, operations }) => ({ draftNumber: number, by: personName, operations })),
      mine: [],
    },
  });
}
