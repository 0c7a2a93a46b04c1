import type { ScreenPoint } from "../view-transform.ts";
import { linesCross } from "./segments-cross.ts";

export type LeaderEnd = ScreenPoint & { number: number };

/** Points from the margin to the place; null where it could not be drawn without crossing another. */
export type RoutedLeader = { number: number; line: readonly ScreenPoint[] | null };

/** Px left of the margin at which a leader may bend, best first. */
const bendsPx = [26, 14, 40, 56, 74, 94, 118, 146, 180, 220, 264] as const;

/** A leader falls or rises by this much a px of its way at most: a steeper one is read as a line of the drawing. */
const steepest = 2.2;

/** Another's end is kept off by this much where it can be, px. */
const endHalfPx = 7;

/** A place no leader runs through, px: words and figures on the drawing. */
export type KeptClear = { leftPx: number; topPx: number; rightPx: number; footPx: number };

/**
 * Leaders level out of the margin with one bend, none crossing another or running through what is lettered, those with
 * the shortest way first. Each takes the first such bend that keeps off the ends of the others, else the first of all;
 * one that finds none is left out and its number stands on the drawing alone.
 */
export function routeLeaders(
  anchors: readonly LeaderEnd[],
  slots: readonly LeaderEnd[],
  lettered: readonly KeptClear[] = [],
): RoutedLeader[] {
  const ends = anchors.flatMap((anchor) => {
    const slot = slots.find(({ number }) => number === anchor.number);
    return slot === undefined ? [] : [{ anchor, slot }];
  });
  const shortestFirst = ends.toSorted((a, b) => wayPx(a) - wayPx(b));
  const drawn: (readonly ScreenPoint[])[] = [];
  const routed = shortestFirst.map(({ anchor, slot }): RoutedLeader => {
    const free = bendsPx
      .map((bend) => leaderLine(slot, anchor, bend))
      .filter(isFlatEnough)
      .filter((each) => drawn.every((other) => !linesCross(each, other)))
      .filter((each) => !lettered.some((place) => runsThrough(each, place)));
    const others = ends.filter((each) => each.anchor.number !== anchor.number).map((each) => around(each.anchor));
    const line = free.find((each) => !others.some((place) => runsThrough(each, place))) ?? free[0];
    if (line !== undefined) drawn.push(line);
    return { number: anchor.number, line: line ?? null };
  });
  return routed.toSorted((a, b) => a.number - b.number);
}

type Ends = { anchor: LeaderEnd; slot: LeaderEnd };

const wayPx = ({ anchor, slot }: Ends): number => Math.hypot(anchor.xPx - slot.xPx, anchor.yPx - slot.yPx);

/** An anchor nearer to the margin than the bend is reached without one. */
function leaderLine(slot: ScreenPoint, anchor: ScreenPoint, bendPx: number): ScreenPoint[] {
  const bend = Math.max(slot.xPx - bendPx, anchor.xPx);
  return [
    { xPx: slot.xPx, yPx: slot.yPx },
    { xPx: bend, yPx: slot.yPx },
    { xPx: anchor.xPx, yPx: anchor.yPx },
  ];
}

const isFlatEnough = ([, bend, end]: readonly ScreenPoint[]): boolean =>
  bend === undefined ||
  end === undefined ||
  Math.abs(end.yPx - bend.yPx) <= steepest * Math.max(Math.abs(end.xPx - bend.xPx), endHalfPx);

const around = ({ xPx, yPx }: ScreenPoint): KeptClear => ({
  leftPx: xPx - endHalfPx,
  topPx: yPx - endHalfPx,
  rightPx: xPx + endHalfPx,
  footPx: yPx + endHalfPx,
});

/** Whether a line meets a diagonal of the place, which it must to run through it. */
const runsThrough = (line: readonly ScreenPoint[], { leftPx, topPx, rightPx, footPx }: KeptClear): boolean =>
  [
    [
      { xPx: leftPx, yPx: topPx },
      { xPx: rightPx, yPx: footPx },
    ],
    [
      { xPx: leftPx, yPx: footPx },
      { xPx: rightPx, yPx: topPx },
    ],
  ].some((diagonal) => linesCross(line, diagonal));
