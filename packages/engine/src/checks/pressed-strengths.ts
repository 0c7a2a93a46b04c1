import type { PressedSection } from "../catalog/sections/section.ts";
import { asChannel, flatFlangeMm } from "../codes/cold-formed/channel-member.ts";
import { pressedCompression } from "../codes/cold-formed/pressed-compression.ts";
import { pressedFlexure } from "../codes/cold-formed/pressed-flexure.ts";
import { pressedShear } from "../codes/cold-formed/pressed-shear.ts";
import { pressedTension } from "../codes/cold-formed/pressed-tension.ts";
import { pressedWeakFlexure } from "../codes/cold-formed/pressed-weak-flexure.ts";
import { openShapeOf, openTorsion } from "../codes/steel/torsion.ts";
import { flangeShear } from "../codes/steel/weak-shear.ts";
import { refused, type Resistance } from "../working/resistance.ts";
import type { CodeBasis } from "./code-basis.ts";
import type { CheckedMember, MemberStrengths } from "./checked-member.ts";

type PressedMember = CheckedMember & { readonly section: PressedSection };

/** Strengths of a pressed channel: bottom rail, sill, cross member (AISI S100 D to G; torsion bounded by AISC 360 H3). */
export function pressedStrengths(member: PressedMember, basis: CodeBasis): MemberStrengths {
  return {
    element: member.element,
    family: "cold-formed",
    basis,
    compression: pressedCompression(member, basis.thin),
    tension: pressedTension(member, basis.thin),
    headPressed: pressedFlexure({ ...member, pressed: "head" }, basis.thin),
    footPressed: pressedFlexure({ ...member, pressed: "foot" }, basis.thin),
    weak: pressedWeakFlexure(member, basis.thin),
    shear: pressedShear(member, basis.thin),
    shearWeak: shearAcross(member, basis),
    torsion: openTorsion(openShapeOf(member.section), member.steel, basis.steel),
  };
}

/** The narrower flange stands for both. */
function shearAcross({ section, steel }: PressedMember, basis: CodeBasis): Resistance {
  const channel = asChannel(section, steel);
  if (channel === undefined) return refused("shape not covered by this check");
  const flat = Math.min(flatFlangeMm(channel, "head"), flatFlangeMm(channel, "foot"));
  const widest = Math.max(flatFlangeMm(channel, "head"), flatFlangeMm(channel, "foot"));
  const flanges = { name: section.name, steel, widthMm: flat, outstandMm: widest, thicknessMm: section.thicknessMm };
  return flangeShear(flanges, basis.steel);
}
