import type { PartWorst } from "../strength/screen.ts";
import { trial } from "./trial.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";

/** Parts that are looked at for what decides. */
const MOST_USED = 3;

/**
 * The sets of assumptions under which the most used parts are worst and best with the opening in its first place: they draw the
 * boundaries of works and of does not work. The first set is always among them.
 */
export function decidingSets(ground: TrialGround): readonly TrialSet[] {
  const { worsts } = trial(ground, ground.unit.openings, ground.sets);
  const mostUsed = worsts.toSorted((a, b) => useOf(b) - useOf(a)).slice(0, MOST_USED);
  const deciding = new Set(mostUsed.flatMap(extremes));
  return ground.sets.filter(({ set }, n) => n === 0 || deciding.has(set.id));
}

const useOf = ({ asDrawn, heldDown }: PartWorst): number => {
  const use = (asDrawn ?? heldDown)?.use ?? 0;
  return Number.isFinite(use) ? use : 0;
};

/** The sets in which a part is used most and least; one that needs something held is only worst. */
function extremes({ envelope, heldDown }: PartWorst): string[] {
  const sorted = [...envelope].toSorted(([, a], [, b]) => a - b);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined) return heldDown === undefined ? [] : [heldDown.solved.set.id];
  return [least[0], most[0]];
}
