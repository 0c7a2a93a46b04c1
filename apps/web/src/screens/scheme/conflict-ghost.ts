import { applyOperations } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";
import type { DraftState } from "../../data/draft/draft-state.ts";

/** The draft as it would be with the act that was set aside: drawn in pencil over what is there. */
export function conflictGhost(draft: DraftState): Scheme | undefined {
  const [conflict] = draft.conflicts;
  if (conflict === undefined) return undefined;
  const applied = applyOperations(draft.scheme, conflict.act.operations);
  return applied.ok ? applied.scheme : undefined;
}
