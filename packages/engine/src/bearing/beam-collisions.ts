import { beamsNear, padsNear, postsNear, type Building } from "../geometry/building.ts";
import { beamHeightMm, type PlacedBeam } from "../geometry/placed-beam.ts";
import { holdsPoint, overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { mostPackingMm, touchMm } from "../geometry/tolerances.ts";

/** A beam drawn into a post, pad or other beam; `depthMm` is the least move that would part them. */
export type BeamCollision = {
  readonly beam: PlacedBeam;
  readonly otherId: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly zMm: number;
  readonly depthMm: number;
};

type Solid = { readonly id: string; readonly outline: PlanRect; readonly lowMm: number; readonly highMm: number };

/** Every beam with what it shares a place with, each pair once. An end framed into a post or beam meets it, no more. */
export const beamCollisionsOf = (building: Building): BeamCollision[] =>
  building.beams.flatMap((beam) => {
    const solids: Solid[] = [
      ...postsNear(building, beam.outline)
        .filter(({ outline }) => !endsIn(beam, outline))
        .map(({ id, outline, footZMm, headZMm }) => ({ id, outline, lowMm: footZMm, highMm: headZMm })),
      ...padsNear(building, beam.outline).map(({ id, outline, topZMm, depthMm }) => ({
        id,
        outline,
        lowMm: topZMm - depthMm,
        highMm: topZMm,
      })),
      ...beamsNear(building, beam.outline)
        .filter((other) => beam.id < other.id && !endsIn(beam, other.outline) && !endsIn(other, beam.outline))
        .map((other) => ({ id: other.id, outline: other.outline, ...beamHeightMm(other) })),
    ];
    return solids
      .map((solid) => ({ beam, otherId: solid.id, ...placeOf(beam, solid), depthMm: sharedMm(beam, solid) }))
      .filter(({ depthMm }) => depthMm > touchMm);
  });

const endsIn = ({ from, to }: PlacedBeam, outline: PlanRect): boolean =>
  [from, to].some(({ xMm, yMm }) => holdsPoint(outline, xMm, yMm, mostPackingMm));

function sharedMm(beam: PlacedBeam, { outline, lowMm, highMm }: Solid): number {
  const own = beamHeightMm(beam);
  const inHeight = Math.min(own.highMm, highMm) - Math.max(own.lowMm, lowMm);
  return inHeight <= touchMm ? inHeight : Math.min(inHeight, overlapDepthMm(beam.outline, outline));
}

const placeOf = (beam: PlacedBeam, { outline, highMm }: Solid) => ({
  xMm: outline.cxMm,
  yMm: outline.cyMm,
  zMm: Math.min(highMm, beamHeightMm(beam).highMm),
});
