import type { ActionCase } from "../loads/action-case.ts";
import type { DesignBasis } from "../loads/design-basis.ts";
import { factorOf } from "../loads/load-combination.ts";

/** Dead load and one action on a surface, factored. */
export type OneLoadSum = {
  readonly loadPa: number;
  readonly loadFactor: number;
  readonly pressurePa: number;
  readonly meaning: string;
  readonly run: string;
};

/** Dead and one load on a surface at strength level, in the combination that takes most of that load. */
export function oneLoadSum(
  deadPa: number,
  deadMeaning: string,
  loadPa: number,
  { id, symbol }: Pick<ActionCase, "id" | "symbol">,
  loads: DesignBasis,
): OneLoadSum {
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
    loadFactor: s,
    pressurePa: d * deadPa + s * loadPa,
    meaning: `${d} · ${Math.round(deadPa)} Pa of ${deadMeaning} + ${s} · ${Math.round(loadPa)} Pa of ${id}`,
    run: `${d}D + ${s}${symbol}: ${id}`,
  };
}

/** Greatest pressure anywhere on a surface of a container; patches fall or rise evenly. */
export const mostPressurePa = ({ loads }: ActionCase, unitId: string, surface: "roof" | "floor"): number =>
  loads.reduce((most, load) => {
    if (load.kind !== "on" || load.surface !== surface || load.containerId !== unitId) return most;
    const { rect, pressurePa, alongUPaPerMm, alongVPaPerMm } = load.patch;
    const [u, v] = [alongUPaPerMm * (rect.u1 - rect.u0), alongVPaPerMm * (rect.v1 - rect.v0)];
    return Math.max(most, pressurePa + Math.max(u, 0) + Math.max(v, 0));
  }, 0);
