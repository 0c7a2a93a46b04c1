import type { Verdict } from "@cornerway/schema";
import { containerDimensions } from "../../src/catalog/container-dimensions.ts";
import { chartedOpening, confirmOpening } from "../../src/opening-chart.ts";
import { chartSteel, openingPriceStep, priceSteps } from "../../src/price-step.ts";
import type { RandomTrial } from "./random-schemes.ts";

/** Ranks of the price steps of one place, by the chart and by the full analysis, and the full verdict. */
export type Steps = { readonly chart: number; readonly full: number; readonly verdict: Verdict };

export function stepsOf({ scheme, request, place }: RandomTrial): Steps {
  const charted = chartedOpening(scheme, request, place);
  const full = confirmOpening(scheme, request, place);
  if ("accepted" in charted || !full.accepted) throw new Error("the sample is accepted");
  const [unit] = scheme.containers;
  if (unit === undefined) throw new Error("there is a unit");
  const steel = chartSteel(request, containerDimensions(unit.type).sheetZone(request.face), place.widthMm);
  const rank = (verdict: Verdict): number => {
    const priced = openingPriceStep(verdict, steel);
    return priced === undefined ? -1 : priceSteps.indexOf(priced.step);
  };
  return { chart: rank(charted.verdict), full: rank(full.answer.verdict), verdict: full.answer.verdict };
}
