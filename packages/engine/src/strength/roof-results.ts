import type { Scheme } from "@cornerway/schema";
import { corrugatedSheet, folds } from "../catalog/sections/corrugated-sheet.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import { sheetUnderPressure } from "../checks/wind-on-parts.ts";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import type { ActionCase } from "../loads/action-case.ts";
import type { ElementResult } from "./element-result.ts";
import { mostPressurePa, oneLoadSum } from "./one-load-sum.ts";
import { statedResult } from "./stated-result.ts";
import type { StrengthBasis } from "./strength-basis.ts";

const roofSheet = corrugatedSheet(folds.roof, 2);
/** Weight of steel, N/mm³. */
const STEEL = 77.0e-6;

/**
 * Roof sheet as a floor of its own: its weight and finishes with the roof load anywhere on it that asks most, drifts and decks
 * too, in the combination in which that load leads. A roof under another unit has no such load.
 */
export function roofResults(scheme: Scheme, loads: readonly ActionCase[], basis: StrengthBasis): ElementResult[] {
  const strengthOf = (steel: Steel) => basis.factored.sheetBending(roofSheet, steel);
  return scheme.containers.flatMap(({ id, type }): ElementResult[] => {
    const finishPa = scheme.loads
      .filter(({ containerId, surface, case: kind }) => containerId === id && surface === "roof" && kind === "finish")
      .reduce((sum, { pressurePa }) => sum + pressurePa, 0);
    const deadPa = roofSheet.areaMm2PerMm * STEEL * 1e6 + finishPa;
    const sums = loads.map((action) =>
      oneLoadSum(deadPa, "sheet and finishes", mostPressurePa(action, id, "roof"), action, basis.loads),
    );
    const most = sums.filter(({ loadPa }) => loadPa > 0).toSorted((a, b) => b.pressurePa - a.pressurePa)[0];
    if (most === undefined) return [];
    const span = { ...most, spanMm: containerDimensions(type).widthMm, from: [] };
    const checkOf = (steel: Steel) => sheetUnderPressure("roof sheet", span, 1, strengthOf(steel));
    const stated = { ownerId: id, place: "roof load", run: most.run };
    return [statedResult(stated, checkOf(steels.unproved), checkOf(steels.weathering))];
  });
}
