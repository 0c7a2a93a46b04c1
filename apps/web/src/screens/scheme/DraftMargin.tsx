import { lazy, Suspense } from "react";
import { Typing } from "../../twin/typing.ts";
import type { DraftHand } from "./use-draft-hand.ts";
import type { DraftJudged } from "./use-draft-judged.ts";

/** What is laid in the margin comes beside the drawing. */
const ChosenForces = lazy(async () => ({ default: (await import("../../forces/ChosenForces.tsx")).ChosenForces }));
const DraftSlips = lazy(async () => ({ default: (await import("./DraftSlips.tsx")).DraftSlips }));
const Tour = lazy(async () => ({ default: (await import("./tour/Tour.tsx")).Tour }));

/** Slips of the draft: the tour, the check and the forces of what is chosen, ways to settle a mark, what is asked and typed. */
export function DraftMargin({
  drawn,
  judged,
  noteChosen,
}: {
  drawn: DraftHand;
  judged: DraftJudged;
  noteChosen: boolean;
}) {
  const { store, draft, hand, acts, standing, edit } = drawn;
  const { checks, ways, forces, report, assessed } = judged;
  return (
    <>
      <Suspense fallback={null}>
        <Tour draft={draft} noteChosen={noteChosen} />
      </Suspense>
      {checks.slip}
      {ways.slip}
      <Suspense fallback={null}>
        <ChosenForces
          forces={forces.shown.stand ? (forces.shown.told?.forces ?? null) : null}
          scheme={hand.shown}
          report={report}
          chosenId={hand.chosenId}
          onOpen={checks.open}
        />
      </Suspense>
      <Typing value={edit.typing}>
        <Suspense fallback={null}>
          <DraftSlips
            {...{ store, draft, hand, acts, undoes: edit.undoes }}
            standing={standing(hand.going ?? [])}
            broke={assessed?.broke ?? null}
          />
        </Suspense>
      </Typing>
    </>
  );
}
