import { useMemo } from "react";
import { handsAt } from "../../drawing/others/other-hands.ts";
import { useRoom } from "../../room/room-context.ts";
import { conflictGhost } from "./conflict-ghost.ts";
import { useOthersGhost } from "./others-ghost.ts";
import type { DraftHand } from "./use-draft-hand.ts";
import { usePresence } from "./use-presence.ts";

/** Others at this sheet: they are told what this hand does, and what they do is drawn in pencil. */
export function useDraftOthers({ draft, hand }: DraftHand) {
  const { here, me } = useRoom();
  const pointAt = usePresence(1, hand);
  const others = useMemo(() => handsAt(here, me.id, 1), [here, me.id]);
  const theirs = useOthersGhost(draft.scheme);
  const isDragging = (hand.lifted || hand.operations.length > 0) && hand.held?.kind !== "unit";
  return {
    others,
    /** What lies under the drawing as a ghost: what is in conflict, else where this hand took it from, else what others hold. */
    ghost: conflictGhost(draft) ?? (isDragging ? draft.scheme : theirs),
    /** The hand that tells where it points. */
    told: {
      ...hand,
      moveTo: (point: Parameters<typeof hand.moveTo>[0]) => {
        pointAt({ projection: point.projection, at: point.at });
        hand.moveTo(point);
      },
    },
  };
}
