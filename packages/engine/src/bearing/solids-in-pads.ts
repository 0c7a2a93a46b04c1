import { padsNear, type Building, type PlacedPad, type PlacedPost } from "../geometry/building.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";

/** A pad that shares a place with another pad or with a post; `depthMm` is the least move that would part them. */
export type SolidInPad = {
  readonly solid: PlacedPad | PlacedPost;
  readonly pad: PlacedPad;
  readonly depthMm: number;
};

/** Strips and slabs run into each other as they are cast. */
export const castTogether = (one: PlacedPad, other: PlacedPad): boolean =>
  one.pad.support !== undefined && other.pad.support !== undefined;

/** Every pad drawn into another, each pair once, and every post drawn into a pad; standing on it only touches. */
export const solidsInPads = (building: Building): SolidInPad[] =>
  [
    ...building.pads.flatMap((solid) =>
      padsNear(building, solid.outline)
        .filter((pad) => solid.id < pad.id && !castTogether(solid, pad))
        .map((pad) => ({ solid, pad, depthMm: depthMm(solid, spanOf(solid), pad) })),
    ),
    ...building.posts.flatMap((solid) =>
      padsNear(building, solid.outline).map((pad) => ({
        solid,
        pad,
        depthMm: depthMm(solid, { fromZMm: solid.footZMm, toZMm: solid.headZMm }, pad),
      })),
    ),
  ].filter((each) => each.depthMm > touchMm);

type Span = { readonly fromZMm: number; readonly toZMm: number };

const spanOf = ({ topZMm, depthMm: highMm }: PlacedPad): Span => ({ fromZMm: topZMm - highMm, toZMm: topZMm });

function depthMm({ outline }: PlacedPad | PlacedPost, span: Span, pad: PlacedPad): number {
  const { fromZMm, toZMm } = spanOf(pad);
  const inHeight = Math.min(span.toZMm, toZMm) - Math.max(span.fromZMm, fromZMm);
  return inHeight <= touchMm ? inHeight : Math.min(inHeight, overlapDepthMm(outline, pad.outline));
}
