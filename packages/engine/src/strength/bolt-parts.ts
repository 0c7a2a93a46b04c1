import type { Section } from "../catalog/sections/section.ts";
import type { Check } from "../checks/check.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import { boltsToWebMm, framedBolts, seatedBolts, type BoltedForce, type BoltedPart } from "../checks/stated-bolts.ts";
import type { Building } from "../geometry/building.ts";
import { sectionOf, steelFor } from "./beam-parts.ts";
import { worstUse } from "./force-part.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A beam is bolted to posts, beams and pads it bears on; on a container it is welded. */
export const isBolted = ({ planned: { above, below } }: ModelledBearing): boolean =>
  "beam" in above && !("point" in below);

/** The bolts of the stated joint wherever a beam is seated on steel or a pad, or framed into the side of steel. */
export function boltParts(
  bearings: readonly ModelledBearing[],
  { beamById }: Building,
  basis: CheckBasis,
): StrengthPart[] {
  return bearings.filter(isBolted).flatMap((bearing) => {
    const { above, framed = false } = bearing.planned;
    const beam = "beam" in above ? beamById.get(above.beam) : undefined;
    return beam === undefined ? [] : [boltPart(bearing, sectionOf(beam), framed, basis)];
  });
}

function boltPart(bearing: ModelledBearing, section: Section, framed: boolean, basis: CheckBasis): StrengthPart {
  const part: BoltedPart = {
    thicknessMm: thicknessOf(section, framed),
    steel: steelFor(section),
    toWebMm: boltsToWebMm(outstandOf(section)),
  };
  const checksOf = ({ pullN, shearN }: BoltedForce): readonly Check[] =>
    framed ? framedBolts(shearN, part, basis) : seatedBolts({ pullN, shearN }, part, basis);
  const force = (solved: SolvedRun): BoltedForce => {
    const [x, y, z] = bearingForce(bearing, solved);
    const level = x * x + y * y;
    return framed
      ? { pullN: 0, shearN: Math.sqrt(level + z * z) }
      : { pullN: Math.max(-z, 0), shearN: Math.sqrt(level) };
  };
  // shear alone acts in proportion; what a pull has left beside a shear does not
  const sheared = worstUse(checksOf({ pullN: 0, shearN: KILONEWTON })) / KILONEWTON;
  const useOf = ({ pullN, shearN }: BoltedForce): number => {
    if (pullN < NEWTON) return shearN < NEWTON ? 0 : sheared * shearN;
    return worstUse(checksOf({ pullN, shearN }));
  };
  const place = `${bearing.place}, stated bolts`;
  return {
    id: `${bearing.ownerId} made connection ${place}`,
    ownerId: bearing.ownerId,
    element: "made connection",
    place,
    level: "strength",
    use: (solved) => useOf(force(solved)),
    decide: (solved) => {
      const acting = force(solved);
      return { limitState: "bolt", utilisation: useOf(acting), checks: () => checksOf(acting) };
    },
  };
}

const KILONEWTON = 1000;
/** Less is rounding. */
const NEWTON = 1;

/** What the bolts go through: a flange where it is seated, a web where it is framed; of a tube or angle its wall. */
function thicknessOf(section: Section, framed: boolean): number {
  if (section.kind === "tube") return section.wallMm;
  if (section.kind === "I" || section.kind === "channel") return framed ? section.webMm : section.flangeMm;
  return section.thicknessMm;
}

/** From the face of the web to the outer edge of the flange; of a tube from the inner face of a side wall, either way the edge. */
function outstandOf(section: Section): number {
  if (section.kind === "I") return (section.flangeWidthMm - section.webMm) / 2;
  if (section.kind === "channel") return section.flangeWidthMm - section.webMm;
  return section.kind === "angle" ? section.legMm - section.thicknessMm : 0;
}
