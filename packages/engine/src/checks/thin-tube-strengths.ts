import type { TubeSection } from "../catalog/sections/section.ts";
import { turnedTube } from "../catalog/sections/turned-tube.ts";
import { pressedTension } from "../codes/cold-formed/pressed-tension.ts";
import { thinTubeCompression, thinTubeFlexure, thinTubeShear } from "../codes/cold-formed/thin-tube.ts";
import { tubeTorsion } from "../codes/steel/torsion.ts";
import type { CodeBasis } from "./code-basis.ts";
import type { CheckedMember, MemberStrengths } from "./checked-member.ts";

/** Strengths of a container's thin tube: top rail, header (AISI S100 D to G; torsion by AISC 360 H3). */
export function thinTubeStrengths(
  member: CheckedMember & { readonly section: TubeSection },
  basis: CodeBasis,
): MemberStrengths {
  const { lengths } = member;
  const turned = { ...member, section: turnedTube(member.section) };
  const strong = thinTubeFlexure(member, basis.thin);
  return {
    element: member.element,
    family: "cold-formed",
    basis,
    compression: thinTubeCompression({ ...member, lengthXMm: lengths.strongMm, lengthYMm: lengths.weakMm }, basis.thin),
    tension: pressedTension(member, basis.thin),
    headPressed: strong,
    footPressed: strong,
    weak: thinTubeFlexure(turned, basis.thin),
    shear: thinTubeShear(member, basis.thin),
    shearWeak: thinTubeShear(turned, basis.thin),
    torsion: tubeTorsion(member, basis.steel),
  };
}
