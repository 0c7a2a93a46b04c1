import { placeContainer, toLocal, toSite, type PlacedContainer } from "@cornerway/engine";
import { mmToUm, type Container, type PointMm, type Scheme, type Tie } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";

/** Units farther apart than this are not side by side, mm; common practice, no published source. */
const mostGapMm = 150;
const touchMm = 5;

/** A unit that stands beside another, and the gap between their walls as a line in plan at mid-gap. */
export interface Neighbour {
  id: string;
  gapMm: number;
  /** Ends of the length both share, mm in the site, at the base of the lower of the two. */
  from: PointMm;
  to: PointMm;
  baseMm: number;
  topMm: number;
}

/** The units a tie can join this one to: side by side, long side or end, on one storey. */
export const neighboursOf = (scheme: Scheme, unit: Container): Neighbour[] =>
  scheme.containers.flatMap((other) => {
    const found = other.id === unit.id ? null : beside(placeContainer(unit), placeContainer(other));
    return found === null ? [] : [found];
  });

/** Places along the shared length at which a tie is offered. */
export const tiePlaces = ["west or south end", "middle", "east or north end"] as const;
export type TiePlace = (typeof tiePlaces)[number];
export const tieHeights = ["at the top rails", "at the bottom rails"] as const;
export type TieHeight = (typeof tieHeights)[number];

/** From the end of the shared length to the tie, mm: clear of the corner fitting. */
const clearOfEndMm = 300;
const railMidMm = 60;

export function newTie(scheme: Scheme, unit: Container, to: Neighbour, at: TiePlace, height: TieHeight): Tie {
  const share = shareOf(to, at);
  return {
    id: newElementId("t"),
    tag: nextTag(scheme, "TI"),
    aId: unit.id,
    bId: to.id,
    xUm: mmToUm(to.from.xMm + (to.to.xMm - to.from.xMm) * share),
    yUm: mmToUm(to.from.yMm + (to.to.yMm - to.from.yMm) * share),
    zUm: mmToUm(height === "at the top rails" ? to.topMm - railMidMm : to.baseMm + 2 * railMidMm),
    carries: "in plan",
  };
}

function shareOf({ from, to }: Neighbour, at: TiePlace): number {
  if (at === "middle") return 0.5;
  const long = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm);
  const end = Math.min(0.5, clearOfEndMm / Math.max(long, 1));
  const forward = to.xMm - from.xMm + (to.yMm - from.yMm) >= 0;
  return (at === "west or south end") === forward ? end : 1 - end;
}

/** The gap between two upright boxes turned alike by whole quarters of each other; null where they are not side by side. */
function beside(a: PlacedContainer, b: PlacedContainer): Neighbour | null {
  const baseMm = Math.max(a.baseZMm, b.baseZMm);
  const topMm = Math.min(a.topZMm, b.topZMm);
  if (topMm - baseMm < touchMm || (a.frame.turnMdeg - b.frame.turnMdeg) % 90_000 !== 0) return null;
  const across = (b.frame.turnMdeg - a.frame.turnMdeg) % 180_000 !== 0;
  const centre = toLocal(a.frame, { xMm: b.frame.xMm, yMm: b.frame.yMm, zMm: a.baseZMm });
  const half = (placed: PlacedContainer, turned: boolean) => ({
    x: (turned ? placed.dimensions.widthMm : placed.dimensions.lengthMm) / 2,
    y: (turned ? placed.dimensions.lengthMm : placed.dimensions.widthMm) / 2,
  });
  const [own, its] = [half(a, false), half(b, across)];
  const gapX = Math.abs(centre.xMm) - own.x - its.x;
  const gapY = Math.abs(centre.yMm) - own.y - its.y;
  const alongX = gapY > gapX;
  const gapMm = alongX ? gapY : gapX;
  const sharedGap = alongX ? gapX : gapY;
  if (gapMm < -touchMm || gapMm > mostGapMm || sharedGap > -2 * clearOfEndMm) return null;
  const [from, to] = alongX
    ? sharedLine(centre.xMm, own.x, its.x, Math.sign(centre.yMm) * (own.y + gapMm / 2), true)
    : sharedLine(centre.yMm, own.y, its.y, Math.sign(centre.xMm) * (own.x + gapMm / 2), false);
  const site = (point: PointMm) => toSite(a.frame, point);
  return { id: b.id, gapMm: Math.max(0, gapMm), from: site(from), to: site(to), baseMm, topMm };
}

function sharedLine(centre: number, own: number, its: number, mid: number, alongX: boolean): [PointMm, PointMm] {
  const low = Math.max(-own, centre - its);
  const high = Math.min(own, centre + its);
  const at = (along: number): PointMm => (alongX ? { xMm: along, yMm: mid, zMm: 0 } : { xMm: mid, yMm: along, zMm: 0 });
  return [at(low), at(high)];
}
