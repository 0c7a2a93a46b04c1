import type { ActionCase } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { NotionalRule } from "./design-basis.ts";
import type { CombinationLevel } from "./load-combination.ts";
import { toSite } from "../geometry/place.ts";

/**
 * Notional loads of a gravity combination: each unit's factored gravity load times the code's share, sideways at its
 * roof, along each axis both ways. `gravityN` is the combination's load of the unit itself, not of what it carries.
 */
export function notionalCases(
  building: BuildingFrame,
  gravityN: ReadonlyMap<string, number>,
  level: CombinationLevel,
  rule: NotionalRule,
): ActionCase[] {
  const share = rule.share * (level === "allowable" ? rule.allowableFactor : 1);
  return ways.map(([id, x, y]) => {
    const along = toSite({ ...building.axes, xMm: 0, yMm: 0, zMm: 0 }, { xMm: x, yMm: y, zMm: 0 });
    return {
      id: `N ${id}`,
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
  ["+x", 1, 0],
  ["-x", -1, 0],
  ["+y", 0, 1],
  ["-y", 0, -1],
] as const;
