import { applyOperations, type RequestPreview } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readDraft } from "../store/draft-rows.ts";
import { findRequest } from "../store/request-rows.ts";
import { refusalDetail } from "./apply-to-draft.ts";
import { digestOfScheme } from "../store/digest-of-scheme.ts";
import { requestConflict } from "./request-conflict.ts";

/** What taking a request in would do to the draft as it is now; changes nothing. */
export async function previewRequest(
  db: Connection,
  projectId: string,
  requestId: string,
): Promise<Outcome<RequestPreview>> {
  const found = await findRequest(db, projectId, requestId);
  if (found === null) return refuse("not-found");
  const draft = await readDraft(db, projectId);
  const conflict = await requestConflict(db, projectId, { draft, request: found.request });
  const changed = conflict?.ok === false ? (conflict.refusal.conflict?.elements ?? []) : [];
  const applied = applyOperations(draft.scheme, found.request.operations);
  const common = { requestId, draftNumber: draft.number, changed };
  if (!applied.ok)
    return done({ ...common, refusal: refusalDetail(applied.refusal), scheme: null, contentDigest: null });
  const { scheme } = applied;
  return done({ ...common, refusal: null, scheme, contentDigest: digestOfScheme(scheme) });
}
