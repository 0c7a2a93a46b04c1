import type { Scheme } from "@cornerway/schema";
import { corrugatedSheet, folds } from "../catalog/sections/corrugated-sheet.ts";
import { steels } from "../catalog/materials.ts";
import { sheetUnderPressure } from "../checks/wind-on-parts.ts";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import type { ActionCase } from "../loads/action-case.ts";
import type { DesignBasis } from "../loads/design-basis.ts";
import { factorOf } from "../loads/load-combination.ts";
import type { ElementResult } from "./element-result.ts";
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
  const strength = basis.factored.sheetBending(roofSheet, steels.unproved);
  return scheme.containers.flatMap(({ id, type }): ElementResult[] => {
    const finishPa = scheme.loads
      .filter(({ containerId, surface, case: kind }) => containerId === id && surface === "roof" && kind === "finish")
      .reduce((sum, { pressurePa }) => sum + pressurePa, 0);
    const deadPa = roofSheet.areaMm2PerMm * STEEL * 1e6 + finishPa;
    const sums = loads.map((action) => factoredSum(deadPa, mostPa(action, id), action, basis.loads));
    const most = sums.filter(({ loadPa }) => loadPa > 0).toSorted((a, b) => b.pressurePa - a.pressurePa)[0];
    if (most === undefined) return [];
    const span = { ...most, spanMm: containerDimensions(type).widthMm, from: [] };
    const check = sheetUnderPressure("roof sheet", span, 1, strength);
    return [statedResult({ ownerId: id, place: "roof load", run: most.run }, check)];
  });
}

/** Dead and one roof load at strength level, in the combination that takes most of that load. */
function factoredSum(deadPa: number, loadPa: number, { id, symbol }: ActionCase, loads: DesignBasis) {
  const combinations = loads.combinations({
    level: "strength",
    present: new Set(["D", symbol]),
    halfCompanionLive: false,
    overstrength: false,
  });
  const [d, s] = combinations
    .map((one) => [factorOf(one, "D"), factorOf(one, symbol)] as const)
    .reduce((most, next) => (next[1] > most[1] ? next : most), [0, 0]);
  return {
    loadPa,
    pressurePa: d * deadPa + s * loadPa,
    meaning: `${d} · ${Math.round(deadPa)} Pa of sheet and finishes + ${s} · ${Math.round(loadPa)} Pa of ${id}`,
    run: `${d}D + ${s}${symbol}: ${id}`,
  };
}

/** Greatest pressure anywhere on the roof of a container; patches fall or rise evenly. */
const mostPa = ({ loads }: ActionCase, unitId: string): number =>
  loads.reduce((most, load) => {
    if (load.kind !== "on" || load.surface !== "roof" || load.containerId !== unitId) return most;
    const { rect, pressurePa, alongUPaPerMm, alongVPaPerMm } = load.patch;
    const [u, v] = [alongUPaPerMm * (rect.u1 - rect.u0), alongVPaPerMm * (rect.v1 - rect.v0)];
    return Math.max(most, pressurePa + Math.max(u, 0) + Math.max(v, 0));
  }, 0);
