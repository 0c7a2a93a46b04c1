import type { CheckBasis } from "../checks/check-basis.ts";
import { statedTieChecks, statedTieUse, type TieForce } from "../checks/stated-tie.ts";
import { tieNodes } from "../model/draw-ties.ts";
import type { ModelSpring } from "../model/analytical-model.ts";
import type { PlannedTie } from "../model/tie-plan.ts";
import { movementOf } from "./movements.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** Every tie as the stated plate, under what goes through it. */
export function tieParts(
  ties: readonly PlannedTie[],
  springs: readonly ModelSpring[],
  basis: CheckBasis,
): StrengthPart[] {
  const springOf = new Map(springs.map((spring) => [spring.id, spring]));
  return ties.flatMap((tie): StrengthPart[] => {
    const spring = springOf.get(tie.tieId);
    return spring === undefined ? [] : [tiePart(tie.tieId, forceOn(tie, spring), basis)];
  });
}

const PLACE = "stated plate";

function tiePart(tieId: string, forceIn: (solved: SolvedRun) => TieForce, basis: CheckBasis): StrengthPart {
  const useOf = statedTieUse(basis);
  const use = (solved: SolvedRun): number => {
    const force = forceIn(solved);
    return isLess(force) ? 0 : useOf(force);
  };
  return {
    id: `${tieId} tie ${PLACE}`,
    ownerId: tieId,
    element: "tie",
    place: PLACE,
    level: "strength",
    use,
    decide: (solved) => ({
      limitState: "weld",
      utilisation: use(solved),
      checks: (steel) => statedTieChecks(forceIn(solved), basis, steel),
    }),
  };
}

/** Less is rounding, N. */
const NEWTON = 1;
const isLess = ({ acrossN, levelN, uprightN }: TieForce): boolean =>
  Math.max(Math.abs(acrossN), levelN, uprightN) < NEWTON;

/** The force of a tie, from how far its two ends in the gap have moved apart. */
function forceOn({ tieId, across: [ax, ay] }: PlannedTie, { k }: ModelSpring): (solved: SolvedRun) => TieForce {
  const { a, b } = tieNodes(tieId);
  return (solved) => {
    const [from, to] = [movementOf(a, solved), movementOf(b, solved)];
    const [x, y, z] = [k[0] * (to[0] - from[0]), k[1] * (to[1] - from[1]), k[2] * (to[2] - from[2])];
    return { acrossN: -(x * ax + y * ay), levelN: Math.abs(x * ay - y * ax), uprightN: Math.abs(z) };
  };
}
