import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letYield } from "../steel/steel-basis.ts";
import { asChannel, flatWebMm } from "./channel-member.ts";
import { aisi, type ColdFormedBasis } from "./cold-formed-basis.ts";

/** Force on one flange or on both, within 1.5 h of the member's end or further in. */
export type CripplingCase = "end, one flange" | "inside, one flange" | "end, both flanges" | "inside, both flanges";

export type CripplingForce = {
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly where: CripplingCase;
  readonly bearingMm: number;
  /** Inside radius of the bends, mm. The generic specifications give none: see `assumedInsideRadiusMm`. */
  readonly insideRadiusMm: number;
};

/** Inside radius taken where none is measured: the thickness itself. Common practice, no published source. */
export const assumedInsideRadiusMm = (thicknessMm: number): number => thicknessMm;

type Coefficients = {
  readonly c: number;
  readonly cr: number;
  readonly cn: number;
  readonly ch: number;
  readonly omega: number;
  readonly phi: number;
  readonly mostRadius: number;
};

/** Single web channels, not fastened to the support, unstiffened flanges (AISI S100-16 Table G5-2). From memory. */
const table: Readonly<Record<CripplingCase, Coefficients>> = {
  "end, one flange": { c: 4, cr: 0.4, cn: 0.6, ch: 0.03, omega: 1.8, phi: 0.85, mostRadius: 2 },
  "inside, one flange": { c: 13, cr: 0.32, cn: 0.1, ch: 0.01, omega: 1.8, phi: 0.85, mostRadius: 1 },
  "end, both flanges": { c: 2, cr: 0.11, cn: 0.37, ch: 0.01, omega: 2, phi: 0.75, mostRadius: 1 },
  "inside, both flanges": { c: 13, cr: 0.47, cn: 0.25, ch: 0.04, omega: 1.9, phi: 0.8, mostRadius: 1 },
};

/** Web crippling of an unlipped channel under a force at right angles to its flange (G5), N. */
export function pressedWebCrippling(force: CripplingForce, basis: ColdFormedBasis): Resistance {
  const channel = asChannel(force.section, force.steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const { section, where } = force;
  const factors = table[where];
  const working = openWorking(`Web crippling, ${where}`, aisi(basis, "G5, Table G5-2"));
  letYield(working, force.steel);
  working.let("t", section.thicknessMm, "mm", `thickness, ${section.name}`, section.certainty, section.source);
  const flatMm = flatWebMm(channel);
  working.let("h", flatMm, "mm", "flat depth of the web", section.certainty, section.source);
  working.let("R", force.insideRadiusMm, "mm", "inside radius of the bends", "common practice");
  // what bears over more is no weaker: no more of it is counted than the clause was tested for
  const countedMm = Math.min(force.bearingMm, MOST_OVER_DEPTH * flatMm, MOST_OVER_THICKNESS * section.thicknessMm);
  working.let("N", countedMm, "mm", "length of bearing, as far as it counts", "derived");
  letCoefficients(working, factors);
  if (!withinLimits(working)) return refused("proportions outside the clause's limits");
  working.compute("P_n", "C*t^2*F_y*(1 - C_R*sqrt(R/t))*(1 + C_N*sqrt(N/t))*(1 - C_h*sqrt(h/t))", "N", "Eq. G5-1");
  return stateResistance(working, "P_n", "N", { ...factors, certainty: "memory" }, basis.method);
}

function letCoefficients(working: OpenWorking, factors: Coefficients): void {
  working.let("C", factors.c, "1", "coefficient", "memory", "Table G5-2");
  working.let("C_R", factors.cr, "1", "coefficient of the radius", "memory", "Table G5-2");
  working.let("C_N", factors.cn, "1", "coefficient of the bearing length", "memory", "Table G5-2");
  working.let("C_h", factors.ch, "1", "coefficient of the web's slenderness", "memory", "Table G5-2");
  working.let("R_max", factors.mostRadius, "1", "largest R/t", "memory", "Table G5-2");
}

/** N/h ≤ 2, N/t ≤ 210 (G5). */
const MOST_OVER_DEPTH = 2;
const MOST_OVER_THICKNESS = 210;

/** h/t ≤ 200, N/t and N/h as above, R/t as the table says (G5). */
function withinLimits(working: OpenWorking): boolean {
  return [
    working.when("h/t", "<=", "200", "G5"),
    working.when("N/t", "<=", "210", "G5"),
    working.when("N/h", "<=", "2", "G5"),
    working.when("R/t", "<=", "R_max", "Table G5-2"),
  ].every(Boolean);
}
