import type { Scheme } from "@cornerway/schema";
import { lazy, Suspense, useState } from "react";
import type { Hand } from "../../hand/use-hand.ts";
import { useRoom } from "../../room/room-context.ts";
import { useProposed } from "./use-proposed.ts";

const UndoesWatch = lazy(() => import("./UndoesWatch.tsx"));

/** What the edit under way would undo, in one line; `watch` stands on the sheet and finds it out, from the first edit on. */
export function useUndoes(draft: Scheme, hand: Hand) {
  const { project } = useRoom();
  const { proposed, typing } = useProposed(draft, hand);
  const [begun, begin] = useState(false);
  const [sentence, setSentence] = useState<string | null>(null);
  if (proposed !== null && !begun) begin(true);
  const watch = begun ? (
    <Suspense fallback={null}>
      <UndoesWatch project={project} before={draft} after={proposed} onSentence={setSentence} />
    </Suspense>
  ) : null;
  return { typing, watch, undoes: proposed === null ? null : sentence };
}
