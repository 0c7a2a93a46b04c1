import type { Building, Unit } from "../geometry/building.ts";
import { toSite } from "../geometry/place.ts";
import type { ActionCase, ActionLoad } from "../loads/action-case.ts";
import { LastMade } from "../numerics/last-made.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";

/**
 * Level forces on the mass of a unit (earthquake, notional loads) act all along its roof and not at one place: each is
 * spread over both top side rails, with the same resultant and the same turning moment, at the height of the rails' axes.
 */
export function spreadOnRails(action: ActionCase, building: Building): ActionCase {
  if (action.symbol !== "Eh" && action.symbol !== "N") return action;
  const places = building.units.map(({ container }) => container);
  return last.take(action, places, () => spreadIn(action, building));
}

const last = new LastMade<ActionCase>();

function spreadIn(action: ActionCase, { unitById }: Building): ActionCase {
  const spread = (): ActionLoad[] =>
    action.loads.flatMap((load) => {
      if (load.kind !== "point" || load.zN !== 0) return [load];
      const unit = unitById.get(load.elementId);
      return unit === undefined ? [load] : alongRails(load, unit);
    });
  let known: ActionLoad[] | undefined;
  // most cases are in no run of a live answer
  return {
    ...action,
    get loads() {
      return (known ??= spread());
    },
  };
}

type PointLoad = Extract<ActionLoad, { kind: "point" }>;

const PLACES_ON_A_RAIL = 20;

function alongRails(load: PointLoad, unit: Unit): PointLoad[] {
  const { dimensions, frame } = unit;
  const [length, width] = [dimensions.holeSpacingLengthwiseMm, dimensions.holeSpacingCrosswiseMm];
  const zMm = dimensions.heightMm - usualAssumptions.topRailBelowTopMm;
  const places = Array.from(
    { length: PLACES_ON_A_RAIL },
    (_, n) => length * ((n + 0.5) / PLACES_ON_A_RAIL - 0.5),
  ).flatMap((xMm) => [width / 2, -width / 2].map((yMm) => toSite(frame, { xMm, yMm, zMm })));
  const middle = toSite(frame, { xMm: 0, yMm: 0, zMm });
  const arms = places.map((at) => ({ at, x: at.xMm - middle.xMm, y: at.yMm - middle.yMm }));
  const turning = (load.at.xMm - middle.xMm) * load.yN - (load.at.yMm - middle.yMm) * load.xN;
  const squares = arms.reduce((sum, { x, y }) => sum + x * x + y * y, 0);
  return arms.map(({ at, x, y }) => ({
    ...load,
    at,
    xN: load.xN / arms.length - (turning * y) / squares,
    yN: load.yN / arms.length + (turning * x) / squares,
  }));
}
