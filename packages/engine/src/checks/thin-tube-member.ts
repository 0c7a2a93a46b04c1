import type { Steel } from "../catalog/materials.ts";
import type { TubeSection } from "../catalog/sections/section.ts";
import type { ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { thinAxialWithBending, thinBendingWithShear } from "../codes/cold-formed/combined-forces.ts";
import { pressedTension } from "../codes/cold-formed/pressed-tension.ts";
import { thinTubeCompression, thinTubeFlexure, thinTubeShear } from "../codes/cold-formed/thin-tube.ts";
import type { Refusal, Resistance } from "../working/resistance.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { CheckedElement, LimitState } from "./limit-state.ts";
import type { MemberDemand } from "./member-demand.ts";

/** A thin tube of a container: top rail, header. Lengths mm. */
export type ThinTubeMember = {
  readonly element: CheckedElement;
  readonly section: TubeSection;
  readonly steel: Steel;
  readonly lengthXMm: number;
  readonly lengthYMm: number;
  readonly unbracedMm: number;
  readonly cb: number;
};

export type ThinTubeStrengths = {
  readonly compression: Resistance;
  readonly tension: Resistance;
  readonly strong: Resistance;
  readonly weak: Resistance;
  readonly shear: Resistance;
  readonly shearWeak: Resistance;
};

export function thinTubeStrengths(member: ThinTubeMember, basis: ColdFormedBasis): ThinTubeStrengths {
  const turned = { ...member, section: turnedTube(member.section) };
  return {
    compression: thinTubeCompression(member, basis),
    tension: pressedTension(member, basis),
    strong: thinTubeFlexure(member, basis),
    weak: thinTubeFlexure(turned, basis),
    shear: thinTubeShear(member, basis),
    shearWeak: thinTubeShear(turned, basis),
  };
}

const notCovered: Resistance = { ok: false, why: "shape not covered by this check" };

/** Every limit state of a thin tube under one set of forces (AISI S100 D to H). Torsion is refused where it acts. */
export function thinTubeChecks(
  { element }: ThinTubeMember,
  strengths: ThinTubeStrengths,
  demand: MemberDemand,
  basis: ColdFormedBasis,
): readonly Check[] {
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
    ...combined(element, axial, strengths, demand, basis),
  ];
}

function combined(
  element: CheckedElement,
  axial: Resistance,
  { strong, weak, shear }: ThinTubeStrengths,
  demand: MemberDemand,
  basis: ColdFormedBasis,
): Check[] {
  const refuse = (why: Refusal): Check[] => [{ ok: false, element, limitState: "axial force with bending", why }];
  if (!axial.ok) return refuse(axial.why);
  if (!strong.ok) return refuse(strong.why);
  if (!weak.ok) return refuse(weak.why);
  const required = { axialN: demand.axialN, mxNmm: demand.momentStrongNmm, myNmm: demand.momentWeakNmm };
  const available = { axial: axial.working, mx: strong.working, my: weak.working };
  const whole = checkOf(
    { element, limitState: "axial force with bending" },
    thinAxialWithBending(required, available, basis),
  );
  if (!shear.ok) return [whole];
  const withShear = thinBendingWithShear(
    { momentNmm: demand.momentStrongNmm, shearN: demand.shearStrongN },
    { moment: strong.working, shear: shear.working },
    basis,
  );
  return [whole, checkOf({ element, limitState: "bending with shear" }, withShear)];
}

const turnedTube = (section: TubeSection): TubeSection => ({
  ...section,
  depthMm: section.widthMm,
  widthMm: section.depthMm,
  flatDepthMm: section.flatWidthMm,
  flatWidthMm: section.flatDepthMm,
  ixMm4: section.iyMm4,
  iyMm4: section.ixMm4,
  sxMm3: section.syMm3,
  syMm3: section.sxMm3,
  zxMm3: section.zyMm3,
  zyMm3: section.zxMm3,
  rxMm: section.ryMm,
  ryMm: section.rxMm,
});
