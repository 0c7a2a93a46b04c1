import { useMemo } from "react";
import { useThread } from "../../data/thread.ts";
import { isLifted } from "../../hand/lift.ts";
import { useMarkNotes } from "../../notes/use-mark-notes.ts";
import { useRested } from "../../paper/use-rested.ts";
import { useRoom } from "../../room/room-context.ts";
import type { DraftHand } from "./use-draft-hand.ts";
import type { DraftJudged } from "./use-draft-judged.ts";

/** The notes on the draft: its marks, as they stood when the hand last rested, and what people wrote that is not settled. */
export function useDraftNotes({ hand }: DraftHand, { marks, waitingIds, checks, ways }: DraftJudged) {
  const { project } = useRoom();
  const thread = useThread(project.id).data;
  const written = useMemo(() => (thread?.notes ?? []).filter(({ settledAt }) => settledAt === null), [thread]);
  const { shown } = hand;
  const spoken = useMemo(() => ({ scheme: shown, marks, waiting: waitingIds }), [shown, marks, waitingIds]);
  return useMarkNotes({
    ...useRested(spoken, hand.held !== null && !isLifted(hand.held)),
    ...{ written, role: project.roles[0], offerOn: checks.offerOn, quietOfferOn: ways.offerOn },
  });
}
