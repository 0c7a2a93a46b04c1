import { may } from "@cornerway/schema";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import { useHand } from "../../hand/use-hand.ts";
import { useEye } from "../../paper/use-eye.ts";
import { useRoom } from "../../room/room-context.ts";
import { useDraftActs } from "./use-draft-acts.ts";
import { useStanding } from "./use-standing.ts";
import { useUndoes } from "./use-undoes.tsx";

/** The draft, the eye that looks at it, the hand that draws on it, and what an edit under way would undo. */
export function useDraftHand(store: DraftStore) {
  const { project } = useRoom();
  const draft = useDraft(store);
  const acts = useDraftActs(store);
  const eye = useEye(draft.scheme);
  const mayDraw = may(project.roles, "draw");
  const { standing, hear } = useStanding();
  const hand = useHand({
    ...{ scheme: draft.scheme, draw: acts.draw, cannot: acts.setCannot, mayDraw, side: eye.side },
    ...{ standing, lifts: eye.unfoldedId === null },
  });
  const edit = useUndoes(draft.scheme, hand);
  return { store, draft, acts, eye, mayDraw, hand, standing, hear, edit };
}

export type DraftHand = ReturnType<typeof useDraftHand>;
