import type { Steel } from "../catalog/materials.ts";
import type { Section, TubeSection } from "../catalog/sections/section.ts";
import { compression, type ColumnLengths } from "../codes/steel/compression.ts";
import { strongFlexure, weakFlexure } from "../codes/steel/flexure.ts";
import { axialWithBending } from "../codes/steel/interaction.ts";
import { shear } from "../codes/steel/shear.ts";
import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import { tensionYielding } from "../codes/steel/tension.ts";
import type { Refusal, Resistance } from "../working/resistance.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { CheckedElement, LimitState } from "./limit-state.ts";
import type { MemberDemand } from "./member-demand.ts";

/** An added post, beam or jamb of structural steel. Lengths mm. */
export type SteelMember = {
  readonly element: CheckedElement;
  readonly section: Section;
  readonly steel: Steel;
  readonly lengths: ColumnLengths;
  readonly unbracedMm: number;
  readonly cb: number;
};

/** Strengths of a steel member; they depend on no demand, so one set serves every combination. */
export type SteelStrengths = {
  readonly compression: Resistance;
  readonly tension: Resistance;
  readonly strong: Resistance;
  readonly weak: Resistance;
  readonly shear: Resistance;
  readonly shearWeak: Resistance;
};

export function steelStrengths(member: SteelMember, basis: SteelBasis): SteelStrengths {
  const { section, steel } = member;
  const turned = section.kind === "tube" ? turnedTube(section) : undefined;
  return {
    compression: compression(member, basis),
    tension: tensionYielding({ steel, grossMm2: section.areaMm2, effectiveNetMm2: section.areaMm2 }, basis),
    strong: strongFlexure(member, basis),
    weak: weakFlexure(member, basis),
    shear: shear(member, basis),
    shearWeak: turned === undefined ? notCovered : shear({ section: turned, steel }, basis),
  };
}

/** Shear across the flanges of an open shape is not covered; a demand there refuses the check. */
const notCovered: Resistance = { ok: false, why: "shape not covered by this check" };

/** Every limit state of a steel member under one set of forces (AISC 360 E, F, G, H1). Torsion is refused where it acts. */
export function steelMemberChecks(
  member: SteelMember,
  strengths: SteelStrengths,
  demand: MemberDemand,
  basis: SteelBasis,
): readonly Check[] {
  const { element } = member;
  const check = (limitState: LimitState, value: number, strength: Resistance): Check[] =>
    value === 0 ? [] : [demandAgainst({ element, limitState }, value, strength)];
  const axial = demand.axialN >= 0 ? strengths.compression : strengths.tension;
  return [
    ...check(demand.axialN >= 0 ? "compression" : "tension", demand.axialN, axial),
    ...check("bending, strong axis", demand.momentStrongNmm, strengths.strong),
    ...check("bending, weak axis", demand.momentWeakNmm, strengths.weak),
    ...check("shear", demand.shearStrongN, strengths.shear),
    ...check("shear", demand.shearWeakN, strengths.shearWeak),
    ...check("torsion", demand.torsionNmm, notCovered),
    interaction(member, axial, strengths, demand, basis),
  ];
}

function interaction(
  { element }: SteelMember,
  axial: Resistance,
  { strong, weak }: SteelStrengths,
  demand: MemberDemand,
  basis: SteelBasis,
): Check {
  const subject = { element, limitState: "axial force with bending" } as const;
  const refuse = (why: Refusal): Check => ({ ok: false, ...subject, why });
  if (!axial.ok) return refuse(axial.why);
  if (!strong.ok) return refuse(strong.why);
  if (!weak.ok) return refuse(weak.why);
  const required = { axialN: demand.axialN, mxNmm: demand.momentStrongNmm, myNmm: demand.momentWeakNmm };
  const available = { axial: axial.working, mx: strong.working, my: weak.working };
  return checkOf(subject, axialWithBending(required, available, basis));
}

/** The same tube seen from its other side, for shear across it. */
const turnedTube = (section: TubeSection): TubeSection => ({
  ...section,
  depthMm: section.widthMm,
  widthMm: section.depthMm,
  flatDepthMm: section.flatWidthMm,
  flatWidthMm: section.flatDepthMm,
});
