import { anchorDepthMm, statedAnchors } from "../catalog/stated-anchors.ts";
import type { AnchorGroup } from "../codes/concrete/anchor-group.ts";
import { anchors } from "../checks/anchors.ts";
import type { Check } from "../checks/check.ts";
import { padUplift } from "../checks/pad-uplift.ts";
import type { Building, PlacedPad } from "../geometry/building.ts";
import { onBeam } from "../geometry/placed-beam.ts";
import { postAt, type BearingPlan } from "../model/bearing-plan.ts";
import { forcePart, worstUse } from "./force-part.ts";
import { isEarthquake } from "./holds-needed.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** What a hold-down hands to its pad, N. */
type Pull = { readonly pullN: number; readonly shearN: number };

/**
 * Pads with a hold-down or added steel on them: the anchors of the stated detail, and the pad's own weight against what lifts
 * it. A foot of a post presses only and lifts where it would be pulled: its anchors take what it holds sideways, in a wall as well. Anchors are not drawn: four headed ones of 16 mm, 150 mm deep where the pad allows, 200 mm apart, about the middle of the
 * pad under a hold-down and about the axis of the post or beam under those; common practice, no published source.
 */
export function anchorParts(
  building: Building,
  bearings: readonly ModelledBearing[],
  { inWalls }: Pick<BearingPlan, "inWalls">,
  concreteMpa: number,
): StrengthPart[] {
  return building.pads.flatMap((pad): StrengthPart[] => {
    const held = bearings.filter(
      ({ planned: { below, heldById } }) => heldById !== undefined && "ground" in below && below.ground === pad.id,
    );
    const all = bearings.filter(({ planned: { below } }) => "ground" in below && below.ground === pad.id);
    const steel = all.filter(({ planned: { above } }) => !("unitId" in above) || postAt(above, inWalls) !== undefined);
    const units = held.filter((bearing) => !steel.includes(bearing));
    const inMiddle = { about: pad, place: "anchors of the stated detail" };
    return [
      ...(units.length === 0 ? [] : [anchorPart(pad, units, inMiddle, concreteMpa)]),
      ...steel.map((bearing) => {
        const place = `anchors of the stated detail under ${bearing.ownerId}, ${bearing.place}`;
        return anchorPart(pad, [bearing], { about: footOf(bearing, building, inWalls), place }, concreteMpa);
      }),
      ...(held.length === 0 ? [] : [upliftPart(pad, all)]),
    ];
  });
}

/** Where a group of anchors is, in plan, and what it goes by. */
type Group = { readonly about: Spot; readonly place: string };
type Spot = { readonly xMm: number; readonly yMm: number };

/** Where added steel stands on its pad, in plan. */
function footOf(
  { planned: { above } }: ModelledBearing,
  { postById, beamById }: Building,
  inWalls: BearingPlan["inWalls"],
): Spot {
  const post = postById.get(postAt(above, inWalls) ?? "");
  if (post !== undefined) return post;
  const beam = "beam" in above ? beamById.get(above.beam) : undefined;
  if (beam === undefined || !("beam" in above)) throw new RangeError("posts and beams alone stand here");
  return onBeam(beam, above.uMm);
}

function anchorPart(
  placed: PlacedPad,
  held: readonly ModelledBearing[],
  { about, place }: Group,
  concreteMpa: number,
): StrengthPart {
  const checksOf = ({ pullN, shearN }: Pull, seismic: boolean): readonly Check[] =>
    anchors({ element: "pad", group: detail(placed, about, concreteMpa, seismic), pullN, shearN, grouted: false });
  // every strength is held against a force of its own: shares grow in proportion, the sum of the worst two against 1.2
  const shares = [false, true].map((seismic) => ({
    pull: worstUse(checksOf({ pullN: NEWTON, shearN: 0 }, seismic)),
    shear: worstUse(checksOf({ pullN: 0, shearN: NEWTON }, seismic)),
  }));
  const useOf = (solved: SolvedRun): number => {
    const { pullN, shearN } = pullOn(held, solved);
    const { pull = 0, shear = 0 } = shares[isEarthquake(solved) ? 1 : 0] ?? {};
    const [t, v] = [pull * pullN, shear * shearN];
    return Math.max(t, v, t > 0 && v > 0 ? (t + v) / TOGETHER : 0);
  };
  return {
    id: `${placed.id} pad ${place}`,
    ownerId: placed.id,
    element: "pad",
    place,
    ...(held.length > 1 && { said: TOGETHER_SAID }),
    level: "strength",
    use: useOf,
    decide: (solved) => ({
      limitState: "anchor",
      utilisation: useOf(solved),
      checks: () => checksOf(pullOn(held, solved), isEarthquake(solved)),
    }),
  };
}

const TOGETHER_SAID =
  "Hold-downs of several fittings on this pad count as one group of anchors about its middle: their pulls are added, and their shears whichever way they point.";

/** ACI 318 17.8.3, from memory. */
const TOGETHER = 1.2;
const NEWTON = 1;

function pullOn(held: readonly ModelledBearing[], solved: SolvedRun): Pull {
  let [pullN, shearN] = [0, 0];
  for (const bearing of held) {
    const [x, y, z] = bearingForce(bearing, solved);
    pullN += Math.max(-z, 0);
    // pushed against each other they do not relieve each other: each is drawn with anchors of its own
    shearN += Math.sqrt(x * x + y * y);
  }
  return { pullN, shearN };
}

const ANCHOR = { ...statedAnchors, steelAreaMm2: 157, tensileMpa: 400, headMm2: 314 };

function detail({ pad, outline }: PlacedPad, { xMm, yMm }: Spot, concreteMpa: number, seismic: boolean): AnchorGroup {
  const { count, diameterMm, steelAreaMm2, tensileMpa, headMm2, spacingMm } = ANCHOR;
  const [dx, dy] = [xMm - outline.cxMm, yMm - outline.cyMm];
  const { ux, uy, halfUMm, halfVMm } = outline;
  const toEdge = (halfMm: number, offMm: number): number => Math.max(halfMm - Math.abs(offMm) - spacingMm / 2, 0);
  const thicknessMm = pad.depthUm / 1000;
  // shear may point either way: the nearer edge is the one it meets
  const near = Math.min(toEdge(halfUMm, dx * ux + dy * uy), toEdge(halfVMm, dy * ux - dx * uy));
  return {
    ...{ count, diameterMm, steelAreaMm2, tensileMpa, headMm2, spacingXMm: spacingMm, spacingYMm: spacingMm },
    edge: { leftMm: near, rightMm: near, frontMm: near, backMm: near },
    depthMm: anchorDepthMm(thicknessMm),
    installed: "cast in, headed",
    concreteMpa,
    concreteThicknessMm: thicknessMm,
    seismic,
  };
}

function upliftPart({ id, pad }: PlacedPad, own: readonly ModelledBearing[]): StrengthPart {
  const volumeMm3 = (pad.lengthUm / 1000) * (pad.widthUm / 1000) * (pad.depthUm / 1000);
  const pulled = (solved: SolvedRun): number => own.reduce((sum, bearing) => sum - bearingForce(bearing, solved)[2], 0);
  return forcePart({ ownerId: id, element: "pad", place: "its own weight", level: "strength" }, pulled, (forceN) => [
    padUplift(forceN, volumeMm3),
  ]);
}
