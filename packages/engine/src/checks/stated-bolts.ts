import { e70Mpa, steels, type Steel } from "../catalog/materials.ts";
import { demandAgainst, type Check, type Subject } from "./check.ts";
import type { CheckBasis } from "./check-basis.ts";

/** What the bolts of a joint carry together, N. */
export type BoltedForce = { readonly pullN: number; readonly shearN: number };

/** The thinner part they go through beside the plate of 10 mm: a flange, or a web. */
export type BoltedPart = {
  readonly thicknessMm: number;
  readonly steel: Steel;
  /** From the line of the bolts of a seated joint to the face of the web that holds its flange, mm. */
  readonly toWebMm: number;
};

/**
 * The stated joints of added steel: bolts of ¾ in, A325 with threads in the plane of shear, 38 mm from every edge. Seated: four
 * through the flange and a plate of 10 mm, two in a line 76 mm apart. Framed: three in one line, 76 mm apart, in a plate of 10 × 228 with 6 mm of fillet
 * on both sides of it. Common practice, no published source.
 */
const BOLT = { grade: "A325-N", diameterMm: 19.05 } as const;
const PLATE = { thicknessMm: 10, depthMm: 228, weldLegMm: 6 };
const [EDGE_MM, APART_MM, WRENCH_MM] = [38, 76, 31.75];
const [SEATED, FRAMED] = [4, 3];
/** A hole is 1/16 in wider than the bolt, and counts as 1/16 in wider still (Table J3.3, B4.3b; from memory), mm. */
const [HOLE_MM, NET_HOLE_MM] = [BOLT.diameterMm + 1.6, BOLT.diameterMm + 3.2];

const subject = (limitState: Subject["limitState"]): Subject => ({ element: "made connection", limitState });

/**
 * From the web face to the bolts of a seated joint in a part whose outer edge is so far from it, mm: 38 mm from the edge, and never
 * nearer than a wrench needs, 1¼ in for a bolt of ¾ in (AISC Manual Table 7-15, from memory).
 */
export const boltsToWebMm = (outstandMm: number): number => Math.max(outstandMm - EDGE_MM, WRENCH_MM);

/** A beam seated on what bears it; flange and plate are held against the pull up to which they do not pry the bolts. */
export function seatedBolts({ pullN, shearN }: BoltedForce, part: BoltedPart, basis: CheckBasis): readonly Check[] {
  const [pull, shear] = [pullN / SEATED, shearN / SEATED];
  return [
    ...boltsSheared(shear, part, basis),
    demandAgainst(subject("bolt"), pull, basis.joints.boltTensionBesideShear(BOLT, shear)),
    ...(pull > 0 ? pried(pull, part, basis) : []),
  ];
}

const pried = (pullN: number, part: BoltedPart, { joints }: CheckBasis): Check[] =>
  [part, { thicknessMm: PLATE.thicknessMm, steel: steels.plate }].map(({ thicknessMm, steel }) => {
    const plate = { steel, thicknessMm, boltMm: BOLT.diameterMm, toFaceMm: part.toWebMm, tributaryMm: APART_MM };
    return demandAgainst(subject("bolt"), pullN, joints.pullWithoutPrying(plate));
  });

/** A beam framed into the side of a post or beam: all it carries is shear of its bolts and of their plate. */
export function framedBolts(shearN: number, part: BoltedPart, basis: CheckBasis): readonly Check[] {
  const { joints } = basis;
  const grossMm2 = PLATE.depthMm * PLATE.thicknessMm;
  const netMm2 = grossMm2 - FRAMED * NET_HOLE_MM * PLATE.thicknessMm;
  const weld = basis.fillet({
    legMm: PLATE.weldLegMm,
    lengthMm: 2 * PLATE.depthMm,
    angleDegree: 0,
    electrodeMpa: e70Mpa,
    thinner: { thicknessMm: PLATE.thicknessMm, steel: steels.plate },
    endLoaded: false,
    tubeEnd: false,
  });
  return [
    ...boltsSheared(shearN / FRAMED, part, basis),
    demandAgainst(subject("shear"), shearN, joints.plateShearYielding(steels.plate, grossMm2)),
    demandAgainst(subject("shear"), shearN, joints.plateShearRupture(steels.plate, netMm2)),
    demandAgainst(subject("weld"), shearN, weld),
  ];
}

/** One bolt in shear, and the holes it bears on in the plate and in the part. */
function boltsSheared(shearN: number, part: BoltedPart, { joints }: CheckBasis): Check[] {
  const clearMm = EDGE_MM - HOLE_MM / 2;
  const { diameterMm } = BOLT;
  return [
    demandAgainst(subject("bolt"), shearN, joints.bolt(BOLT, "shear")),
    ...[part, { thicknessMm: PLATE.thicknessMm, steel: steels.plate }].map((one) =>
      demandAgainst(subject("bolt"), shearN, joints.boltBearing({ ...one, diameterMm, clearMm })),
    ),
  ];
}
