import { openSection } from "../../catalog/sections/open-section.ts";
import { thinWalledSection } from "../../catalog/sections/thin-walled-section.ts";
import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import { openWorking, type OpenWorking } from "../../working/open-working.ts";
import { refused, type Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { letModulus, letYield } from "../steel/steel-basis.ts";
import { asChannel, type Channel, type Flange } from "./channel-member.ts";
import { aisi, flexureFactors, type ColdFormedBasis } from "./cold-formed-basis.ts";
import { effectiveChannel } from "./effective-channel.ts";

/** A pressed channel bent in the plane of its web; `unbracedMm` ≥ 0 between points that hold the pressed flange. */
export type PressedBeam = {
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly pressed: Flange;
  readonly unbracedMm: number;
  readonly cb: number;
};

/**
 * Unlipped channel bent in the plane of its web, N·mm: lateral-torsional buckling (F2), then local buckling (F3.1) on the
 * effective section at that stress. No distortional check: the flanges have no lips. Stress varies with the distance
 * from the axis across the web, so sideways movement must be held by sheet and cross members.
 */
export function pressedFlexure(beam: PressedBeam, basis: ColdFormedBasis): Resistance {
  const channel = asChannel(beam.section, beam.steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const working = openWorking(
    "Pressed channel in bending, in the plane of its web",
    aisi(basis, "F2, F3.1; Appendix 1"),
  );
  letModulus(working);
  letYield(working, beam.steel);
  const reach = beam.pressed === "head" ? beam.section.reach.upMm : beam.section.reach.downMm;
  letGross(working, beam, channel, reach);
  lateralStress(working);
  localStrength(working, channel, beam.pressed, beam.section.ixMm4, reach);
  working.note("Bending is taken in the plane of the web: sheet and cross members hold the section sideways.");
  return stateResistance(working, "M_n", "N·mm", flexureFactors, basis.method);
}

function letGross(working: OpenWorking, beam: PressedBeam, channel: Channel, reach: number): void {
  const { certainty, source, name } = beam.section;
  working.let(
    "S_f",
    beam.section.ixMm4 / reach,
    "mm³",
    `gross modulus to the pressed flange, ${name}`,
    certainty,
    source,
  );
  working.let("d", channel.webMm + beam.section.thicknessMm, "mm", "depth", certainty, source);
  working.let("I_yc", pressedPartMm4(channel, beam.pressed), "mm⁴", "pressed part about the upright axis", "derived");
  working.let("L_b", beam.unbracedMm, "mm", "length between lateral supports", "derived");
  working.let("C_b", beam.cb, "1", "moment gradient", "derived");
}

/** F_n by F2.1; the simpler form for channels, written with the pressed flange alone, so unequal flanges are covered. */
function lateralStress(working: OpenWorking): void {
  working.compute("F_1", "C_b*π^2*E*d*I_yc/S_f", "N", "F2.1, channels, times L_b²");
  if (working.when("2.78*F_y*L_b^2", "<=", "F_1", "F2.1")) {
    working.compute("F_n", "F_y", "MPa", "Eq. F2.1-3");
    return;
  }
  working.compute("F_cre", "F_1/L_b^2", "MPa", "F2.1, channels");
  const inelastic = working.when("F_cre", ">", "0.56*F_y", "F2.1");
  working.compute(
    "F_n",
    inelastic ? "10/9*F_y*(1 - 10*F_y/(36*F_cre))" : "F_cre",
    "MPa",
    inelastic ? "Eq. F2.1-4" : "Eq. F2.1-5",
  );
}

function localStrength(
  working: OpenWorking,
  channel: Channel,
  pressed: Flange,
  grossMm4: number,
  grossReachMm: number,
): void {
  const effective = effectiveChannel(channel, pressed, working.value("F_n"));
  working.let("ρ_f", effective.flangeShare, "1", "share of the pressed flange that works, k 0.43", "derived");
  working.let("k_w", effective.web.k, "1", "plate factor of the web under its stress gradient", "derived");
  working.let("ρ_w", effective.web.share, "1", "share of the web that works", "derived");
  working.let("I_e", Math.min(effective.section.ixMm4, grossMm4), "mm⁴", "second moment of what works", "derived");
  const reach = Math.max(effective.toPressedMm, grossReachMm);
  working.let("y_e", reach, "mm", "neutral axis to the pressed face, by trial", "derived");
  working.compute("S_e", "I_e/y_e", "mm³");
  // First yield may come at the far flange: it caps the moment (S_et F_y of F3.1).
  const far = effective.section.reach.downMm;
  working.let("y_t", far, "mm", "neutral axis to the far face", "derived");
  working.compute("M_n", "min(S_e*F_n, I_e/y_t*F_y)", "N·mm", "Eq. F3.1-1");
}

/** Second moment, about the section's upright centroidal axis, of what lies on the pressed side of the other axis. */
function pressedPartMm4(channel: Channel, pressed: Flange): number {
  const { outline, thicknessMm } = channel.section;
  const whole = openSection(outline, thicknessMm);
  const [foot, head] = [outline[1], outline[2]];
  const tip = pressed === "head" ? outline[3] : outline[0];
  const corner = pressed === "head" ? head : foot;
  if (corner === undefined || tip === undefined) throw new RangeError("pressedPartMm4: no channel");
  const axis = { xMm: corner.xMm, yMm: whole.centroid.yMm };
  const part = thinWalledSection([
    { from: tip, to: corner, thicknessMm },
    { from: corner, to: axis, thicknessMm },
  ]);
  const off = part.centroid.xMm - whole.centroid.xMm;
  return part.iyMm4 + part.areaMm2 * off * off;
}
