import type { Steel } from "../catalog/materials.ts";
import type { PressedSection } from "../catalog/sections/section.ts";
import type { Flange } from "../codes/cold-formed/channel-member.ts";
import type { ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { thinAxialWithBending, thinBendingWithShear } from "../codes/cold-formed/combined-forces.ts";
import type { BucklingLengths } from "../codes/cold-formed/elastic-column.ts";
import { pressedCompression } from "../codes/cold-formed/pressed-compression.ts";
import { pressedFlexure } from "../codes/cold-formed/pressed-flexure.ts";
import { pressedShear } from "../codes/cold-formed/pressed-shear.ts";
import { pressedTension } from "../codes/cold-formed/pressed-tension.ts";
import { pressedWeakFlexure } from "../codes/cold-formed/pressed-weak-flexure.ts";
import type { Refusal, Resistance } from "../working/resistance.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { CheckedElement, LimitState } from "./limit-state.ts";
import type { MemberDemand } from "./member-demand.ts";

/** A pressed channel of a container: bottom rail, sill, cross member. `unbracedMm` between what holds its flange. */
export type ThinMember = {
  readonly element: CheckedElement;
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly lengths: BucklingLengths;
  readonly unbracedMm: number;
  readonly cb: number;
};

/** Strengths of a pressed member, one set for every combination; bending for either flange pressed. */
export type ThinStrengths = {
  readonly compression: Resistance;
  readonly tension: Resistance;
  readonly bending: Readonly<Record<Flange, Resistance>>;
  readonly weak: Resistance;
  readonly shear: Resistance;
};

export function thinStrengths(member: ThinMember, basis: ColdFormedBasis): ThinStrengths {
  return {
    compression: pressedCompression(member, basis),
    tension: pressedTension(member, basis),
    bending: {
      head: pressedFlexure({ ...member, pressed: "head" }, basis),
      foot: pressedFlexure({ ...member, pressed: "foot" }, basis),
    },
    weak: pressedWeakFlexure(member, basis),
    shear: pressedShear(member, basis),
  };
}

const notCovered: Resistance = { ok: false, why: "shape not covered by this check" };

/**
 * Every limit state of a pressed member under one set of forces (AISI S100 D to H). A moment > 0 presses the head flange.
 * Torsion and shear across the web are refused where they act.
 */
export function thinMemberChecks(
  member: ThinMember,
  strengths: ThinStrengths,
  demand: MemberDemand,
  basis: ColdFormedBasis,
): readonly Check[] {
  const { element } = member;
  const check = (limitState: LimitState, value: number, strength: Resistance): Check[] =>
    value === 0 ? [] : [demandAgainst({ element, limitState }, value, strength)];
  const axial = demand.axialN >= 0 ? strengths.compression : strengths.tension;
  const bending = strengths.bending[demand.momentStrongNmm >= 0 ? "head" : "foot"];
  return [
    ...check(demand.axialN >= 0 ? "compression" : "tension", demand.axialN, axial),
    ...check("bending, strong axis", demand.momentStrongNmm, bending),
    ...check("bending, weak axis", demand.momentWeakNmm, strengths.weak),
    ...check("shear", demand.shearStrongN, strengths.shear),
    ...check("shear", demand.shearWeakN, notCovered),
    ...check("torsion", demand.torsionNmm, notCovered),
    axialWithBending(element, { axial, bending, weak: strengths.weak }, demand, basis),
    bendingWithShear(element, bending, strengths.shear, demand, basis),
  ];
}

type Three = { readonly axial: Resistance; readonly bending: Resistance; readonly weak: Resistance };

function axialWithBending(
  element: CheckedElement,
  { axial, bending, weak }: Three,
  demand: MemberDemand,
  basis: ColdFormedBasis,
): Check {
  const subject = { element, limitState: "axial force with bending" } as const;
  const refuse = (why: Refusal): Check => ({ ok: false, ...subject, why });
  if (!axial.ok) return refuse(axial.why);
  if (!bending.ok) return refuse(bending.why);
  if (!weak.ok) return refuse(weak.why);
  const required = { axialN: demand.axialN, mxNmm: demand.momentStrongNmm, myNmm: demand.momentWeakNmm };
  const available = { axial: axial.working, mx: bending.working, my: weak.working };
  return checkOf(subject, thinAxialWithBending(required, available, basis));
}

function bendingWithShear(
  element: CheckedElement,
  bending: Resistance,
  shear: Resistance,
  demand: MemberDemand,
  basis: ColdFormedBasis,
): Check {
  const subject = { element, limitState: "bending with shear" } as const;
  if (!bending.ok) return { ok: false, ...subject, why: bending.why };
  if (!shear.ok) return { ok: false, ...subject, why: shear.why };
  const required = { momentNmm: demand.momentStrongNmm, shearN: demand.shearStrongN };
  return checkOf(subject, thinBendingWithShear(required, { moment: bending.working, shear: shear.working }, basis));
}
