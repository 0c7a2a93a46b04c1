import { applyOperations } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";
import type { Here } from "../../data/live-socket.ts";

/** What someone else is dragging right now, as it would lie on this scheme; drawn in pencil, never an entry. */
export function othersGhost(scheme: Scheme, here: Here, meId: string): Scheme | undefined {
  for (const { personId, presence } of here) {
    if (personId === meId || presence?.dragging == null) continue;
    const applied = applyOperations(scheme, presence.dragging);
    if (applied.ok) return applied.scheme;
  }
  return undefined;
}
