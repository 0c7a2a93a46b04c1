import type { PartWorst } from "../strength/screen.ts";
import { trial } from "./trial.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";

/**
 * The sets of assumptions under which any part is worst or best with the opening in its first place: they draw the boundaries
 * of works and of does not work. The first set is always among them.
 */
export function decidingSets(ground: TrialGround): readonly TrialSet[] {
  const { worsts } = trial(ground, ground.unit.openings, ground.sets);
  const deciding = new Set(worsts.flatMap(extremes));
  return ground.sets.filter(({ set }, n) => n === 0 || deciding.has(set.id));
}

/** The sets in which a part is used most and least; one that needs something held is only worst. */
function extremes({ envelope, heldDown }: PartWorst): string[] {
  const sorted = [...envelope].toSorted(([, a], [, b]) => a - b);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined) return heldDown === undefined ? [] : [heldDown.solved.set.id];
  return [least[0], most[0]];
}
