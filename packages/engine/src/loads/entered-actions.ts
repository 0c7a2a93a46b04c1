import type { Scheme } from "@cornerway/schema";
import type { ActionCase, ActionLoad } from "./action-case.ts";
import { freeLoadsOf } from "./free-loads.ts";

type Loading = { readonly cases: readonly ActionCase[] };

/** Snow someone put in a place lies beside that of the code in every case of it, or by itself where the code has none. */
export function enteredSnow<T extends Loading>(snow: T, scheme: Scheme): T {
  const entered = freeLoadsOf(scheme, "snow");
  if (entered.length === 0) return snow;
  const cases =
    snow.cases.length > 0
      ? snow.cases.map((action) => beside(action, entered))
      : [{ id: "S entered", symbol: "S" as const, loads: entered }];
  return { ...snow, cases };
}

/** Wind someone put in a place may act with each case of the code or not: both are tried. */
export function enteredWind<T extends Loading>(wind: T, scheme: Scheme): T {
  const entered = freeLoadsOf(scheme, "wind");
  if (entered.length === 0) return wind;
  const both = wind.cases.map((action) => ({ ...beside(action, entered), id: `${action.id} with entered` }));
  return { ...wind, cases: [...wind.cases, ...both] };
}

const beside = (action: ActionCase, entered: readonly ActionLoad[]): ActionCase => ({
  ...action,
  loads: [...action.loads, ...entered],
});
