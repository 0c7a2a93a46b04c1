import type { ScreenPoint } from "../view-transform.ts";
import type { KeptClear, LeaderEnd } from "./route-leaders.ts";

/** Half the circle of a number, px: the usual one, and one on a drawing too small for it. */
export const numberHalfPx = { usual: 9, small: 7.5 } as const;
/** A hair of air round it. */
const airPx = 1;

/** How far a number may move off its place, px, and which ways it may take. */
const movesPx = [0, 16, 24, 34, 46, 60] as const;
const mostMovePx = Math.max(...movesPx);
const ways = [
  [1, 0],
  [0, -1],
  [0, 1],
  [-1, 0],
  [0.7, -0.7],
  [0.7, 0.7],
  [-0.7, -0.7],
  [-0.7, 0.7],
] as const;

/** A number over another cannot be read at all; a number over a word hides part of it, and a name is soon hidden whole. */
const numberOverNumber = 8;
const numberOverWord = 2;
/** An opening is seen under a number on its edge: one moves off it where the way is short. */
const numberOverOpening = 0.25;
/** A px moved costs this many px² covered. */
const costOfMove = 0.6;

/**
 * Where the numbers of notes stand on the drawing: at their places, or as near to them as they hide neither each other
 * nor what is lettered, beside openings where the way is short; the first given are placed first.
 */
export function placeNumbers(
  ends: readonly LeaderEnd[],
  { lettered, openings }: { lettered: readonly KeptClear[]; openings: readonly KeptClear[] },
  halfPx: number = numberHalfPx.usual,
): Map<number, ScreenPoint> {
  const around = (at: ScreenPoint) => boxAround(at, halfPx + airPx);
  const placed = new Map<number, ScreenPoint>();
  for (const end of ends) {
    const reach = boxAround(end, halfPx + airPx + mostMovePx);
    const within = (others: readonly KeptClear[]) => others.filter((other) => shared(reach, other) > 0);
    const [taken, words, holes] = [within([...placed.values()].map(around)), within(lettered), within(openings)];
    const priced = spotsBy(end).map((spot) => ({
      spot,
      cost:
        numberOverNumber * covered(around(spot), taken) +
        numberOverWord * covered(around(spot), words) +
        numberOverOpening * covered(around(spot), holes) +
        costOfMove * Math.hypot(spot.xPx - end.xPx, spot.yPx - end.yPx),
    }));
    placed.set(end.number, priced.reduce((least, next) => (next.cost < least.cost ? next : least)).spot);
  }
  return placed;
}

const spotsBy = ({ xPx, yPx }: ScreenPoint): ScreenPoint[] =>
  movesPx.flatMap((move) => ways.map(([across, down]) => ({ xPx: xPx + across * move, yPx: yPx + down * move })));

const boxAround = ({ xPx, yPx }: ScreenPoint, halfPx: number): KeptClear => ({
  leftPx: xPx - halfPx,
  topPx: yPx - halfPx,
  rightPx: xPx + halfPx,
  footPx: yPx + halfPx,
});

const covered = (box: KeptClear, others: readonly KeptClear[]): number =>
  others.reduce((sum, other) => sum + shared(box, other), 0);

function shared(a: KeptClear, b: KeptClear): number {
  const width = Math.min(a.rightPx, b.rightPx) - Math.max(a.leftPx, b.leftPx);
  const height = Math.min(a.footPx, b.footPx) - Math.max(a.topPx, b.topPx);
  return width > 0 && height > 0 ? width * height : 0;
}
