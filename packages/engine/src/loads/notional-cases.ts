import type { ActionCase } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { NotionalRule } from "./design-basis.ts";
import { toSite } from "../geometry/place.ts";

/**
 * Notional loads along each axis: each unit's gravity load times the code's share at strength level, sideways at its
 * roof. `gravityN` is the load of the unit itself, not of what it carries.
 */
export function notionalCases(
  building: BuildingFrame,
  gravityN: ReadonlyMap<string, number>,
  { share }: NotionalRule,
): ActionCase[] {
  return ways.map(([id, x, y]) => {
    const along = toSite({ ...building.axes, xMm: 0, yMm: 0, zMm: 0 }, { xMm: x, yMm: y, zMm: 0 });
    return {
      id,
      symbol: "N",
      loads: building.boxes.map(({ id: elementId, placed }) => {
        const force = share * (gravityN.get(elementId) ?? 0);
        return {
          kind: "point",
          elementId,
          at: { xMm: placed.frame.xMm, yMm: placed.frame.yMm, zMm: placed.topZMm },
          xN: force * along.xMm,
          yN: force * along.yMm,
          zN: 0,
        };
      }),
    };
  });
}

const ways = [
  ["N x", 1, 0],
  ["N y", 0, 1],
] as const;
