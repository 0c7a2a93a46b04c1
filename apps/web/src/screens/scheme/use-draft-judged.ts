import { useEffect, useMemo } from "react";
import { readsChecks, useDraftChecks } from "../../checks/check-source.ts";
import { useChecks } from "../../checks/use-checks.tsx";
import { useCostBook } from "../../data/cost-book.ts";
import { useForcesShown, withPath } from "../../forces/use-forces-shown.tsx";
import { useRemediesSlip } from "../../remedies/use-remedies-slip.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { judgedSoFar } from "../../worker/judged-so-far.ts";
import { useAssessment } from "../../worker/use-assessment.ts";
import { useStrength } from "../../worker/use-strength.ts";
import type { DraftHand } from "./use-draft-hand.ts";
import { useSayMove } from "./use-say-move.ts";

/** What the engine says of what is drawn: the load path at once, strength, checks, forces and ways once the hand rests. */
export function useDraftJudged({ draft, acts, hand, hear }: DraftHand) {
  const { project } = useRoom();
  const { shown, lift } = hand;
  const inHand = hand.held !== null;
  const book = useCostBook(project).data?.book ?? null;
  const { assessed, waiting } = useAssessment(shown, book, lift.atRest);
  useEffect(() => hear(assessed), [hear, assessed]);
  const strength = useStrength(shown, inHand, lift.atRest);
  const judged = useMemo(() => judgedSoFar(assessed?.assessment ?? null, strength, shown), [assessed, strength, shown]);
  const report = strength.stands ? (strength.judged?.report ?? null) : null;
  const forces = useForcesShown(shown, report, strength);
  const { deflectedIn } = forces;
  const checks = useChecks(useDraftChecks(strength), hand.chosenId, { inHand, deflectedIn });
  const drawnOf = useMemo(() => withPath(judged.assessment, forces.path), [judged.assessment, forces.path]);
  const ways = useRemediesSlip({
    ...{ scheme: draft.scheme, book, plain: !readsChecks(project.roles) },
    take: { label: "Draw it so", onTake: acts.draw, asleepBecause: whyNot(project, "draw") },
  });
  useSayMove(acts.drawn, assessed, draft.scheme);
  return { ...judged, assessed, waiting, report, checks, forces, drawnOf, ways };
}

export type DraftJudged = ReturnType<typeof useDraftJudged>;
