import type { Section } from "../catalog/sections/section.ts";
import { turnedTube } from "../catalog/sections/turned-tube.ts";
import { compression } from "../codes/steel/compression.ts";
import { strongFlexure, weakFlexure } from "../codes/steel/flexure.ts";
import { shear } from "../codes/steel/shear.ts";
import { tensionYielding } from "../codes/steel/tension.ts";
import { openShapeOf, openTorsion, tubeTorsion } from "../codes/steel/torsion.ts";
import { flangeShear } from "../codes/steel/weak-shear.ts";
import { refused, type Resistance } from "../working/resistance.ts";
import type { CodeBasis } from "./code-basis.ts";
import type { CheckedMember, MemberStrengths } from "./checked-member.ts";

/** Strengths of rolled shapes and structural tubes (AISC 360 D to H). */
export function structuralStrengths(member: CheckedMember, basis: CodeBasis): MemberStrengths {
  const { section, steel, lengths } = member;
  const column = { section, steel, lengths: { xMm: lengths.strongMm, yMm: lengths.weakMm, twistMm: lengths.twistMm } };
  const strong = strongFlexure(member, basis.steel);
  const area = { steel, grossMm2: section.areaMm2, effectiveNetMm2: section.areaMm2 };
  return {
    element: member.element,
    family: "structural steel",
    basis,
    compression: compression(column, basis.steel),
    tension: tensionYielding(area, basis.steel),
    headPressed: strong,
    footPressed: strong,
    weak: weakFlexure(member, basis.steel),
    shear: shear(member, basis.steel),
    shearWeak: shearAcross(section, member, basis),
    torsion: torsionOf(section, member, basis),
  };
}

function shearAcross(section: Section, { steel }: CheckedMember, basis: CodeBasis): Resistance {
  if (section.kind === "tube") return shear({ section: turnedTube(section), steel }, basis.steel);
  if (section.kind !== "I" && section.kind !== "channel") return refused("shape not covered by this check");
  const { name, flangeWidthMm: widthMm, flangeMm: thicknessMm } = section;
  const outstandMm = section.kind === "I" ? widthMm / 2 : widthMm;
  return flangeShear({ name, steel, widthMm, outstandMm, thicknessMm }, basis.steel);
}

function torsionOf(section: Section, { steel }: CheckedMember, basis: CodeBasis): Resistance {
  if (section.kind === "tube") return tubeTorsion({ section, steel }, basis.steel);
  if (section.kind === "angle") return refused("shape not covered by this check");
  return openTorsion(openShapeOf(section), steel, basis.steel);
}
