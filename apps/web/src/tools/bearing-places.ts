import { placeContainer, toLocal, toSite } from "@cornerway/engine";
import type { PlacedContainer } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";

/** A place where the bottom rail or a corner of a unit lies over a member below, away from the corners of that member. */
export interface BearingPlace {
  upperId: string;
  lowerId: string;
  /** On the upper face of what is below, mm. */
  at: PointMm;
  /** Between the two, mm: what a packing fills. */
  gapMm: number;
  /** Width of the member below, mm: a plate no wider lies wholly on it. */
  widthMm: number;
}

/** The most that packing fills, mm: more is not a seat but a post or a beam. Rail over rail is 18.5. */
const mostGapMm = 60;
/** Width of a plate on a beam, within the flange of the narrowest on offer, mm. Common practice, no published source. */
const beamPlateMm = 100;
/** Lines nearer to parallel than this do not cross: sine of 10°. Common practice, no published source. */
const leastCrossingSine = 0.174;

/** Every place a seat may stand under a unit: its rails and corners over rails and beams, its rails over fittings. */
export function bearingPlaces(scheme: Scheme, unitId: string): BearingPlace[] {
  const unit = scheme.containers.find(({ id }) => id === unitId);
  if (unit === undefined) return [];
  const upper = placeContainer(unit);
  const below = [
    ...scheme.containers.filter(({ id }) => id !== unitId).map((other) => membersOf(placeContainer(other))),
    ...scheme.beams.map((beam): Members => ({
      id: beam.id,
      lines: [{ from: mm(beam.from), to: mm(beam.to) }],
      fittings: [],
      widthMm: beamPlateMm,
    })),
  ];
  return below.flatMap((members) => placesOver(upper, members));
}

interface Line {
  from: PointMm;
  to: PointMm;
}

interface Members {
  id: string;
  /** Upper faces of the members along their middle. */
  lines: Line[];
  fittings: PointMm[];
  widthMm: number;
}

const mm = ({ xUm, yUm, zUm }: { xUm: number; yUm: number; zUm: number }): PointMm => ({
  xMm: xUm / 1000,
  yMm: yUm / 1000,
  zMm: zUm / 1000,
});

/** Top side rails of a unit between its fittings, and its top fittings. */
function membersOf({ id, dimensions, frame, topFittings }: PlacedContainer): Members {
  const { lengthMm, widthMm, heightMm, fitting, topRailWidthMm, proudOfRoofMm } = dimensions;
  const x = lengthMm / 2 - fitting.lengthMm;
  const y = widthMm / 2 - topRailWidthMm / 2;
  const zMm = heightMm - proudOfRoofMm;
  const rail = (side: 1 | -1): Line => ({
    from: toSite(frame, { xMm: -x, yMm: side * y, zMm }),
    to: toSite(frame, { xMm: x, yMm: side * y, zMm }),
  });
  return { id, lines: [rail(-1), rail(1)], fittings: topFittings.map(({ at }) => at), widthMm: topRailWidthMm };
}

function placesOver(upper: PlacedContainer, members: Members): BearingPlace[] {
  const { dimensions, frame } = upper;
  const half = dimensions.lengthMm / 2 - dimensions.fitting.lengthMm;
  const y = dimensions.widthMm / 2 - dimensions.bottomRailWidthMm / 2;
  const underside = upper.baseZMm + dimensions.baseAboveFittingMm;
  const rails = [-y, y].map((yMm): Line => ({
    from: toSite(frame, { xMm: -half, yMm, zMm: dimensions.baseAboveFittingMm }),
    to: toSite(frame, { xMm: half, yMm, zMm: dimensions.baseAboveFittingMm }),
  }));
  const place = (at: PointMm, gapMm: number): BearingPlace[] =>
    gapMm < 0 || gapMm > mostGapMm
      ? []
      : [{ upperId: upper.id, lowerId: members.id, at, gapMm, widthMm: members.widthMm }];
  const onLines = members.lines.flatMap((line) => [
    ...rails.flatMap((rail) => {
      const at = crossing(rail, line);
      return at === null ? [] : place(at, underside - at.zMm);
    }),
    ...upper.bottomFittings.flatMap((foot) => {
      const at = footOn(foot.at, line, dimensions.fitting.widthMm / 2);
      return at === null ? [] : place(at, upper.baseZMm - at.zMm);
    }),
  ]);
  const onFittings = members.fittings.flatMap((fitting) => {
    const local = toLocal(frame, fitting);
    const under = Math.abs(local.xMm) < half && Math.abs(Math.abs(local.yMm) - y) < dimensions.bottomRailWidthMm;
    return under ? place(fitting, underside - fitting.zMm) : [];
  });
  return [...onLines, ...onFittings];
}

/** Where two lines cross in plan, on the second; null where they run along each other or end before. */
function crossing(a: Line, b: Line): PointMm | null {
  const [ax, ay] = [a.to.xMm - a.from.xMm, a.to.yMm - a.from.yMm];
  const [bx, by] = [b.to.xMm - b.from.xMm, b.to.yMm - b.from.yMm];
  const turn = ax * by - ay * bx;
  if (Math.abs(turn) < leastCrossingSine * Math.hypot(ax, ay) * Math.hypot(bx, by)) return null;
  const [dx, dy] = [b.from.xMm - a.from.xMm, b.from.yMm - a.from.yMm];
  const onA = (dx * by - dy * bx) / turn;
  const onB = (dx * ay - dy * ax) / turn;
  return onA < 0 || onA > 1 || onB < 0 || onB > 1 ? null : between(b, onB);
}

/** The point of a line nearest to a foot, when the fitting reaches over it and not past its ends. */
function footOn(foot: PointMm, line: Line, reachMm: number): PointMm | null {
  const [x, y] = [line.to.xMm - line.from.xMm, line.to.yMm - line.from.yMm];
  const share = ((foot.xMm - line.from.xMm) * x + (foot.yMm - line.from.yMm) * y) / (x * x + y * y);
  if (share <= 0 || share >= 1) return null;
  const at = between(line, share);
  return Math.hypot(at.xMm - foot.xMm, at.yMm - foot.yMm) > reachMm ? null : at;
}

const between = ({ from, to }: Line, share: number): PointMm => ({
  xMm: from.xMm + (to.xMm - from.xMm) * share,
  yMm: from.yMm + (to.yMm - from.yMm) * share,
  zMm: from.zMm + (to.zMm - from.zMm) * share,
});
