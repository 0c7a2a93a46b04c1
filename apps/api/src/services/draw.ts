import { canonicalJson, touchedByAll, type DraftAct, type DraftActDone } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { findDraftAct, readDraft, type DraftActRow, type DraftRow } from "../store/draft-rows.ts";
import { actOf } from "./act-of.ts";
import { applyToDraft } from "./apply-to-draft.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { draftConflict } from "./draft-conflict.ts";
import { authorOf, type Part } from "./part.ts";

/**
 * One drawing act in server order. It is re-based when nothing it reads or writes changed after its base; an undo is
 * applied when what it takes back is as that act left it. Sent twice, it is one act with one answer.
 */
export async function draw(database: Database, sender: Part, act: DraftAct): Promise<Outcome<DraftActDone>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, act);
  return actOf(database, sender, "draw", async (tx, part) => {
    const earlier = await findDraftAct(tx, projectId, act.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(answerOf(earlier)) : refuse("id-reused");
    const draft = await readDraft(tx, projectId);
    const refused = await refusalOf(tx, projectId, draft, act);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "draw");
    const { id, operations, undoes = null } = act;
    return applyToDraft(tx, projectId, { draft, author, act: { id, operations, undoes, bodyDigest } });
  });
}

/** What was answered when an act was first done. */
export const answerOf = ({ number, contentDigest, entry }: DraftActRow): DraftActDone => ({
  draftNumber: number,
  contentDigest,
  entry,
});

async function refusalOf(
  tx: Connection,
  projectId: string,
  draft: DraftRow,
  act: DraftAct,
): Promise<Outcome<never> | undefined> {
  if (act.base > draft.number) return refuse("draft-base-ahead", { detail: `the draft is at ${draft.number}` });
  const rest = { draftNumber: draft.number, mine: act.operations };
  if (act.undoes === undefined) {
    const { reads, writes } = touchedByAll(draft.scheme, act.operations);
    return draftConflict(tx, projectId, { after: act.base, keys: [...new Set([...writes, ...reads])], ...rest });
  }
  const undone = await findDraftAct(tx, projectId, act.undoes);
  if (undone === null) return refuseField("body-invalid", "/undoes", "there is no such act in this draft");
  if (canonicalJson(undone.inverse) !== canonicalJson(act.operations))
    return refuseField("body-invalid", "/operations", "an undo carries the inverse that the record gives for the act");
  return draftConflict(tx, projectId, { after: undone.number, keys: undone.writes, ...rest });
}
