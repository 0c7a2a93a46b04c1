import { lazy, Suspense } from "react";
import { useRoom, whyNot } from "../../room/room-context.ts";
import type { DraftHand } from "./use-draft-hand.ts";
import type { DraftJudged } from "./use-draft-judged.ts";

const BeginSheet = lazy(async () => ({ default: (await import("./BeginSheet.tsx")).BeginSheet }));
const SchemeKeysSlip = lazy(async () => ({ default: (await import("./SchemeKeysSlip.tsx")).SchemeKeysSlip }));

interface OnDraftFieldProps {
  drawn: DraftHand;
  judged: DraftJudged;
  keysShown: boolean;
  onKeysAway: () => void;
}

/** What is laid on the field of the draft: how to begin, the working of a check, the keys. */
export function OnDraftField({ drawn, judged, keysShown, onKeysAway }: OnDraftFieldProps) {
  const { project } = useRoom();
  const { draft, hand, acts, edit } = drawn;
  const begins = hand.shown.containers.length === 0 && hand.tool === null;
  return (
    <>
      {begins ? (
        <Suspense fallback={null}>
          <BeginSheet
            scheme={draft.scheme}
            onSet={() => hand.take("stack")}
            onDraw={acts.draw}
            asleepBecause={whyNot(project, "draw")}
          />
        </Suspense>
      ) : null}
      {edit.watch}
      {judged.checks.paper}
      {keysShown ? (
        <Suspense fallback={null}>
          <SchemeKeysSlip onClose={onKeysAway} />
        </Suspense>
      ) : null}
    </>
  );
}
