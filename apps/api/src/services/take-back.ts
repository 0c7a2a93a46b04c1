import type { DraftActDone, TakeBack } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Database } from "../store/database.ts";
import { findDraftAct, readDraft } from "../store/draft-rows.ts";
import { actOf } from "./act-of.ts";
import { applyToDraft } from "./apply-to-draft.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { draftConflict } from "./draft-conflict.ts";
import { answerOf } from "./draw.ts";
import { authorOf, type Part } from "./part.ts";

/** Takes an act back by its id, with the inverse that the record has: for acts too large to be sent back. */
export async function takeBack(
  database: Database,
  sender: Part,
  actId: string,
  body: TakeBack,
): Promise<Outcome<DraftActDone>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, { ...body, undoes: actId });
  return actOf(database, sender, "draw", async (tx, part) => {
    const earlier = await findDraftAct(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(answerOf(earlier)) : refuse("id-reused");
    const undone = await findDraftAct(tx, projectId, actId);
    if (undone === null) return refuse("not-found");
    const draft = await readDraft(tx, projectId);
    if (body.base > draft.number) return refuse("draft-base-ahead", { detail: `the draft is at ${draft.number}` });
    const { number: after, writes: keys, inverse: operations } = undone;
    const conflict = await draftConflict(tx, projectId, { after, keys, draftNumber: draft.number, mine: [] });
    if (conflict !== undefined) return conflict;
    const act = { id: body.id, operations, undoes: actId, bodyDigest };
    return applyToDraft(tx, projectId, { draft, author: authorOf(part, "draw"), act });
  });
}
