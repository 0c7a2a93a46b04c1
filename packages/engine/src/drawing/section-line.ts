import type { PointMm } from "@cornerway/schema";
import { hypot } from "../numerics/elementary.ts";
import { STILL_MM } from "../numerics/tolerances.ts";

/** The upright plane a section is cut along: all places of one x (looking west) or of one y (looking north), mm. */
export type SectionPlane = { readonly axis: "x" | "y"; readonly atMm: number };

/** A line in plan that a section is cut along, mm. One looks to its left; places on paper are measured from its start. */
export type SectionLine = {
  readonly fromXMm: number;
  readonly fromYMm: number;
  readonly toXMm: number;
  readonly toYMm: number;
};

/** A plane as a line: places on paper are then the site's own y or x. */
export const lineOf = ({ axis, atMm }: SectionPlane): SectionLine =>
  axis === "x"
    ? { fromXMm: atMm, fromYMm: 0, toXMm: atMm, toYMm: 1000 }
    : { fromXMm: 0, fromYMm: atMm, toXMm: 1000, toYMm: atMm };

export type PlanPoint = Pick<PointMm, "xMm" | "yMm">;
/** Along the line, and away from it to its left, mm. */
type FromLine = { readonly u: number; readonly away: number };
export type Seen = (at: PlanPoint) => FromLine;

/** Places as a section along a line sees them. */
export function seenFrom({ fromXMm, fromYMm, toXMm, toYMm }: SectionLine): Seen {
  const [x, y] = [toXMm - fromXMm, toYMm - fromYMm];
  const long = hypot(x, y);
  if (long < STILL_MM) throw new RangeError("a section's line has two ends that are apart");
  return ({ xMm, yMm }) => {
    const [dx, dy] = [xMm - fromXMm, yMm - fromYMm];
    return { u: (dx * x + dy * y) / long, away: (dy * x - dx * y) / long };
  };
}

/** A place of the site on the paper of a section. */
export const onSection = (line: SectionLine, { xMm, yMm, zMm }: PointMm): { uMm: number; vMm: number } => ({
  uMm: seenFrom(line)({ xMm, yMm }).u,
  vMm: zMm,
});
