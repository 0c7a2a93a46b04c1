import type { Clause } from "../working/working.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { checkOf, type Check, type Subject } from "./check.ts";
import type { MemberDemand } from "./member-demand.ts";

/** A rectangular tube welded all round at its end: outside dimensions, mm. */
export type WeldedEnd = { readonly depthMm: number; readonly widthMm: number };

const clause: Clause = {
  document: "Statics",
  edition: "",
  place: "weld as a line, elastic",
  certainty: "derived",
};

/** Of 100 mm of weld, pulled along its line and across it. */
export type WeldStrengths = { readonly along: Resistance; readonly across: Resistance };

/**
 * Flow in a weld all round the end of a tube, elastic, the weld as a line: what presses, pulls and bends adds up at a corner
 * and pulls the weld across its line, what shears and twists runs along it. Pressing counts as pulling. Across it a weld on
 * thin steel takes more than along. Between the two squares add up, as in the directional method of EN 1993-1-8 4.5.3.2 (from
 * memory), where across is √1.5 times along; with 1.5 times that stays under the curve of AISC 360 Eq. J2-5.
 */
export function frameWeld(
  subject: Subject,
  demand: MemberDemand,
  end: WeldedEnd | undefined,
  { along, across }: WeldStrengths,
): Check {
  if (end === undefined) return { ok: false, ...subject, why: "shape not covered by this check" };
  if (!along.ok) return { ok: false, ...subject, why: along.why };
  if (!across.ok) return { ok: false, ...subject, why: across.why };
  const working = openWorking("Weld all round the end of a tube", clause);
  const put = (symbol: string, value: number, unit: "N" | "N·mm", meaning: string): void =>
    void working.let(symbol, Math.abs(value), unit, meaning, "derived", "analysis");
  put("N", demand.axialN, "N", "force along the tube");
  put("V_s", demand.shearStrongN, "N", "shear, strong axis");
  put("V_w", demand.shearWeakN, "N", "shear, weak axis");
  put("M_s", demand.momentStrongNmm, "N·mm", "moment, strong axis");
  put("M_w", demand.momentWeakNmm, "N·mm", "moment, weak axis");
  put("T", demand.torsionNmm, "N·mm", "torsion");
  working.let("d", end.depthMm, "mm", "depth of the tube", "derived");
  working.let("b", end.widthMm, "mm", "width of the tube", "derived");
  working.take("P_along", along.working, "100 mm of weld, along its line");
  working.take("P_across", across.working, "100 mm of weld, across its line");
  working.compute("f_n", "N/(2*(b + d)) + M_s/(b*d + d^2/3) + M_w/(b*d + b^2/3)", "N/mm", "across the weld");
  working.compute(
    "f_v",
    "sqrt(V_s^2 + V_w^2)/(2*(b + d)) + T*sqrt(b^2 + d^2)/2/((b + d)^3/6)",
    "N/mm",
    "along the weld",
  );
  working.compute("f", "sqrt((f_n*P_along/P_across)^2 + f_v^2)", "N/mm", "both, as if along");
  working.compute("f_a", "P_along/100", "N/mm");
  return checkOf(subject, working.against("f", "f_a"));
}

/** The same on plain numbers: the flow as if along the weld, N/mm; `alongOverAcross` is the weld's strength along over that across. */
export function weldFlow(demand: MemberDemand, { depthMm: d, widthMm: b }: WeldedEnd, alongOverAcross: number): number {
  const size = Math.abs;
  const line = 2 * (b + d);
  const normal =
    size(demand.axialN) / line +
    size(demand.momentStrongNmm) / (b * d + (d * d) / 3) +
    size(demand.momentWeakNmm) / (b * d + (b * b) / 3);
  const { shearStrongN: s, shearWeakN: w } = demand;
  const polar = ((b + d) * (b + d) * (b + d)) / 6;
  const shear = Math.sqrt(s * s + w * w) / line + (size(demand.torsionNmm) * Math.sqrt(b * b + d * d)) / 2 / polar;
  const across = normal * alongOverAcross;
  return Math.sqrt(across * across + shear * shear);
}
