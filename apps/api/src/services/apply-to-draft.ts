import {
  applyOperations,
  touchedByAll,
  type Author,
  type Digest,
  type DraftActDone,
  type Operation,
  type Refusal,
  type Scheme,
} from "@cornerway/schema";
import { done, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import { insertDraftAct, updateDraft, type DraftRow } from "../store/draft-rows.ts";
import { digestOfScheme } from "../store/digest-of-scheme.ts";

export interface NewDraftAct {
  id: string;
  operations: Operation[];
  undoes: string | null;
  bodyDigest: Digest;
}

/** Applies an act to the draft whole or not at all, and writes it to the record. */
export async function applyToDraft(
  tx: Connection,
  projectId: string,
  { draft, act, author }: { draft: DraftRow; act: NewDraftAct; author: Author },
): Promise<Outcome<DraftActDone>> {
  const { id, operations, undoes, bodyDigest } = act;
  const applied = applyOperations(draft.scheme, operations);
  if (!applied.ok) return refuseOperation(draft.scheme, operations, applied.refusal);
  const { scheme, inverse } = applied;
  const contentDigest = digestOfScheme(scheme);
  const number = draft.number + 1;
  await updateDraft(tx, projectId, { number, contentDigest, scheme });
  const entry = await append(tx, projectId, author, () => ({
    kind: "drawn",
    actId: id,
    draftNumber: number,
    contentDigest,
    operations,
    inverse,
    undoes,
  }));
  const { writes } = touchedByAll(draft.scheme, operations);
  const by = { personId: author.id, personName: author.name };
  await insertDraftAct(tx, projectId, {
    ...{ id, number, entry: entry.number, ...by, bodyDigest, contentDigest, undoes, writes, operations, inverse },
  });
  return done({ draftNumber: number, contentDigest, entry: entry.number });
}

const sentences: Record<Refusal["reason"], string> = {
  "id-taken": "its id is taken",
  "tag-taken": "its label is taken",
  "not-found": "what it names is not there",
  "still-holds": "other elements still belong to it",
  full: "the scheme holds no more of these",
  "not-valid": "it would not be a valid element",
};

/** One sentence for a refused operation, with the ids of the elements in its way. */
export const refusalDetail = ({ reason, elementId, by }: Refusal): string =>
  `${elementId}: ${sentences[reason]}${by.length > 0 ? ` (${by.join(", ")})` : ""}`;

/** Names the first of the operations that the scheme cannot take. */
export function refuseOperation(scheme: Scheme, operations: Operation[], refusal: Refusal): Outcome<never> {
  const first = operations.findIndex((_, at) => !applyOperations(scheme, operations.slice(0, at + 1)).ok);
  return refuseField("draft-refused", `/operations/${first}`, refusalDetail(refusal));
}
