import type { ScreenPoint } from "../view-transform.ts";
import { linesCross } from "./segments-cross.ts";

export type LeaderEnd = ScreenPoint & { number: number };

/** Points from the margin to the place; null where it could not be drawn without crossing another. */
export type RoutedLeader = { number: number; line: readonly ScreenPoint[] | null };

/** Px left of the margin at which a leader may bend, best first. */
const bendsPx = [26, 14, 40, 56, 74, 94] as const;

/**
 * Leaders level out of the margin with one bend, none crossing another. Each takes the first bend clear of those before
 * it, those with the shortest way first; one that finds none is left out and its number stands on the drawing alone.
 */
export function routeLeaders(anchors: readonly LeaderEnd[], slots: readonly LeaderEnd[]): RoutedLeader[] {
  const ends = anchors.flatMap((anchor) => {
    const slot = slots.find(({ number }) => number === anchor.number);
    return slot === undefined ? [] : [{ anchor, slot }];
  });
  const shortestFirst = ends.toSorted((a, b) => wayPx(a) - wayPx(b));
  const drawn: (readonly ScreenPoint[])[] = [];
  const routed = shortestFirst.map(({ anchor, slot }): RoutedLeader => {
    const line = bendsPx
      .map((bend) => leaderLine(slot, anchor, bend))
      .find((each) => drawn.every((other) => !linesCross(each, other)));
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
