import type { PointMm } from "@cornerway/schema";
import type { Side } from "./side.ts";

/** A point on the paper of one view, mm at full size: `uMm` to the right, `vMm` up. */
export type ViewPoint = { uMm: number; vMm: number };

export type Projection = Side | "plan";

/**
 * Site point as a view sees it: `u` right, `v` up, `depthMm` away from the eye. Elevations look square at a side from
 * outside; the plan looks down with site +y up.
 */
export function project(projection: Projection, at: PointMm): ViewPoint & { depthMm: number } {
  switch (projection) {
    case "south":
      return { uMm: at.xMm, vMm: at.zMm, depthMm: at.yMm };
    case "north":
      return { uMm: -at.xMm, vMm: at.zMm, depthMm: -at.yMm };
    case "east":
      return { uMm: at.yMm, vMm: at.zMm, depthMm: -at.xMm };
    case "west":
      return { uMm: -at.yMm, vMm: at.zMm, depthMm: at.xMm };
    case "plan":
      return { uMm: at.xMm, vMm: at.yMm, depthMm: -at.zMm };
  }
}

/** The inverse of `project`. */
export function unproject(projection: Projection, { uMm, vMm }: ViewPoint, depthMm: number): PointMm {
  switch (projection) {
    case "south":
      return { xMm: uMm, yMm: depthMm, zMm: vMm };
    case "north":
      return { xMm: -uMm, yMm: -depthMm, zMm: vMm };
    case "east":
      return { xMm: -depthMm, yMm: uMm, zMm: vMm };
    case "west":
      return { xMm: depthMm, yMm: -uMm, zMm: vMm };
    case "plan":
      return { xMm: uMm, yMm: vMm, zMm: -depthMm };
  }
}
