import { applyOperations } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";
import { useMemo, useSyncExternalStore } from "react";
import { useRoom } from "../../room/room-context.ts";

/** What someone else is dragging right now, as it would lie on this scheme; drawn in pencil, never an entry. */
export function useOthersGhost(scheme: Scheme): Scheme | undefined {
  const { here } = useRoom();
  const dragged = useSyncExternalStore(here.listen, here.dragged);
  return useMemo(() => {
    for (const operations of dragged) {
      const applied = applyOperations(scheme, operations);
      if (applied.ok) return applied.scheme;
    }
    return undefined;
  }, [scheme, dragged]);
}
