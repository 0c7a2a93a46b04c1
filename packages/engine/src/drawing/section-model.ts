import type { Scheme } from "@cornerway/schema";
import { placeContainer, solidCorners, type PlacedContainer } from "../geometry/place.ts";

/** The upright plane a section is cut along: all places of one x (looking west) or of one y (looking north), mm. */
export type SectionPlane = { readonly axis: "x" | "y"; readonly atMm: number };

/** A unit where the plane cuts it, mm: u to the right on paper, z up. */
export type SectionCut = {
  readonly placed: PlacedContainer;
  readonly u0Mm: number;
  readonly u1Mm: number;
  readonly z0Mm: number;
  readonly z1Mm: number;
  /** Upper side of the floor's frame and underside of the roof's rails. */
  readonly floorMm: number;
  readonly ceilingMm: number;
};

export type SectionModel = { readonly plane: SectionPlane; readonly cuts: readonly SectionCut[] };

/** What a plane cuts. Looking west, north is to the right; looking north, east is. */
export function sectionModel(scheme: Scheme, plane: SectionPlane): SectionModel {
  const cuts = scheme.containers.flatMap((container) => cutOf(placeContainer(container), plane));
  return { plane, cuts: cuts.toSorted((a, b) => a.z0Mm - b.z0Mm || a.u0Mm - b.u0Mm) };
}

/** The plane that cuts most units; of several the one nearest to the middle of the building. */
export function fullestPlane(scheme: Scheme, axis: SectionPlane["axis"]): SectionPlane | undefined {
  const corners = scheme.containers.map((container) => solidCorners(placeContainer(container)).slice(0, 4));
  const spans = corners.map((each) => rangeOf(each.map((at) => (axis === "x" ? at.xMm : at.yMm))));
  if (spans.length === 0) return undefined;
  const whole = rangeOf(spans.flatMap(({ least, most }) => [least, most]));
  const middle = (whole.least + whole.most) / 2;
  const tried = spans.map(({ least, most }) => (least + most) / 2);
  const cutBy = (at: number) => spans.filter(({ least, most }) => at > least && at < most).length;
  const best = tried.reduce((kept, at) => {
    const gain = cutBy(at) - cutBy(kept);
    return gain > 0 || (gain === 0 && Math.abs(at - middle) < Math.abs(kept - middle)) ? at : kept;
  });
  return { axis, atMm: best };
}

function cutOf(placed: PlacedContainer, { axis, atMm }: SectionPlane): SectionCut[] {
  const { dimensions, baseZMm, topZMm } = placed;
  const outline = solidCorners(placed)
    .slice(0, 4)
    .map(({ xMm, yMm }) => (axis === "x" ? { across: xMm, u: yMm } : { across: yMm, u: xMm }));
  const crossings = outline.flatMap((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    if (a.across < atMm === b.across < atMm) return [];
    return [a.u + ((b.u - a.u) * (atMm - a.across)) / (b.across - a.across)];
  });
  if (crossings.length < 2) return [];
  const { least, most } = rangeOf(crossings);
  return [
    {
      ...{ placed, u0Mm: least, u1Mm: most, z0Mm: baseZMm, z1Mm: topZMm },
      floorMm: baseZMm + dimensions.baseAboveFittingMm + dimensions.bottomRailDepthMm,
      ceilingMm: topZMm - dimensions.proudOfRoofMm - dimensions.topRailDepthMm,
    },
  ];
}

const rangeOf = (values: readonly number[]): { least: number; most: number } => ({
  least: Math.min(...values),
  most: Math.max(...values),
});
