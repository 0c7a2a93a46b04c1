import { alongRailMm } from "../bearing/post-footing.ts";
import type { Structure } from "../bearing/structure.ts";
import type { Rail } from "../fabric/fabric-of.ts";
import { unitsNear, type PlacedPost } from "../geometry/building.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { leastLapMm, mostPackingMm, touchMm } from "../geometry/tolerances.ts";

/** An added post that holds up a top rail or header of a unit it stands in. */
export type HeadSupport = {
  readonly postId: string;
  readonly unitId: string;
  readonly rail: Rail;
  readonly uMm: number;
};

/** The top rails this post's head meets from below, within the packing of a seat. */
export const headSupports = ({ building, topParts }: Structure, post: PlacedPost): HeadSupport[] =>
  unitsNear(building, post.outline).flatMap((unit) =>
    topParts(unit.id)
      .rails.filter(({ rail, outline }) => {
        const gapMm = unit.baseZMm + unit.dimensions.sheetZone(rail).v1 - post.headZMm;
        return gapMm >= -touchMm && gapMm <= mostPackingMm && overlapDepthMm(outline, post.outline) >= leastLapMm;
      })
      .map(({ rail }) => ({ postId: post.id, unitId: unit.id, rail, uMm: alongRailMm(unit, rail, post) })),
  );
