import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { SolvedRun } from "./solve-runs.ts";

/** What a bearing has to hold besides pressing: the greatest force sideways and up, N, strength level. */
export type HoldNeeded = {
  readonly ownerId: string;
  readonly place: string;
  readonly sidewaysN: number;
  readonly sidewaysRun: string;
  readonly upliftN: number;
  readonly upliftRun: string;
};

/** Every bearing that must hold something in some run. */
export function holdsNeeded(bearings: readonly ModelledBearing[], runs: readonly SolvedRun[]): HoldNeeded[] {
  return bearings
    .map((bearing) =>
      runs
        .filter(({ run }) => run.level === "strength")
        .reduce((most, solved) => more(most, bearingForce(bearing, solved), solved), none(bearing)),
    )
    .filter(({ sidewaysN, upliftN }) => sidewaysN > NEWTON || upliftN > NEWTON);
}

/** Less is rounding. */
const NEWTON = 1;

const none = ({ ownerId, place }: ModelledBearing): HoldNeeded => ({
  ownerId,
  place,
  sidewaysN: 0,
  sidewaysRun: "",
  upliftN: 0,
  upliftRun: "",
});

function more(most: HoldNeeded, [x, y, z]: readonly [number, number, number], { run }: SolvedRun): HoldNeeded {
  const sidewaysN = Math.sqrt(x * x + y * y);
  return {
    ...most,
    ...(sidewaysN > most.sidewaysN && { sidewaysN, sidewaysRun: run.id }),
    ...(-z > most.upliftN && { upliftN: -z, upliftRun: run.id }),
  };
}
