import {
  mostOperations,
  operationsBetween,
  readSchemeFile,
  touchedByAll,
  type BringIn,
  type DraftActDone,
  type Operation,
  type Scheme,
} from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { findDraftAct, readDraft, type DraftRow } from "../store/draft-rows.ts";
import { actOf } from "./act-of.ts";
import { applyToDraft } from "./apply-to-draft.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { draftConflict } from "./draft-conflict.ts";
import { answerOf } from "./draw.ts";
import { authorOf, type Part } from "./part.ts";

/**
 * Makes the draft what a file holds, as one act that can be taken back. Refused when something it would take away or
 * change was drawn after the base, and when the file is not as it must be: each fault at its place.
 */
export async function bringIn(database: Database, sender: Part, body: BringIn): Promise<Outcome<DraftActDone>> {
  const { projectId } = sender;
  const read = readSchemeFile(body.file);
  if (!read.ok)
    return refuse(read.code, { fields: read.fields.map((field) => ({ ...field, pointer: `/file${field.pointer}` })) });
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "draw", async (tx, part) => {
    const earlier = await findDraftAct(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(answerOf(earlier)) : refuse("id-reused");
    const draft = await readDraft(tx, projectId);
    const operations = operationsBetween(draft.scheme, read.scheme);
    const refused = await refusalOf(tx, projectId, { draft, base: body.base, operations });
    if (refused !== undefined) return refused;
    const act = { id: body.id, operations, undoes: null, bodyDigest };
    return applyToDraft(tx, projectId, { draft, author: authorOf(part, "draw"), act });
  });
}

async function refusalOf(
  tx: Connection,
  projectId: string,
  { draft, base, operations }: { draft: DraftRow; base: number; operations: Operation[] },
): Promise<Outcome<never> | undefined> {
  if (base > draft.number) return refuse("draft-base-ahead", { detail: `the draft is at ${draft.number}` });
  if (operations.length === 0) return refuseField("draft-refused", "/file/scheme", "the draft is that already");
  if (operations.length > mostOperations)
    return refuseField(
      "draft-refused",
      "/file/scheme",
      `it takes ${operations.length} operations, of ${mostOperations} at most`,
    );
  return draftConflict(tx, projectId, {
    ...{ after: base, keys: keysOf(draft.scheme, operations), draftNumber: draft.number },
    mine: operations.slice(0, mostShown),
  });
}

/** So many of what was sent are shown in a conflict. */
const mostShown = 200;

function keysOf(scheme: Scheme, operations: Operation[]): string[] {
  const { reads, writes } = touchedByAll(scheme, operations);
  return [...new Set([...writes, ...reads])];
}
