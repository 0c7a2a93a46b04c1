import type { Scheme, StrengthReport } from "@cornerway/schema";
import { placeContainer } from "../geometry/place.ts";
import type { ActionCase } from "../loads/action-case.ts";
import { caseResultant } from "../loads/case-resultant.ts";
import { rounded, toKn } from "../units.ts";

/** The sum of the forces of each case, kN in site axes; moved supports have none. */
export function caseTotals(cases: readonly ActionCase[], { containers }: Scheme): StrengthReport["cases"] {
  const placed = containers.map(placeContainer);
  return cases
    .filter(({ loads }) => loads.some(({ kind }) => kind !== "movement"))
    .map((action) => {
      const { xN, yN, zN } = caseResultant(action, placed, SITE_ORIGIN);
      return { id: action.id, symbol: action.symbol, ...{ xKn: kn(xN), yKn: kn(yN), zKn: kn(zN) } };
    });
}

/** Of moments, which are not told here. */
const SITE_ORIGIN = { xMm: 0, yMm: 0, zMm: 0 };

const kn = (forceN: number): number => rounded(toKn(forceN));
