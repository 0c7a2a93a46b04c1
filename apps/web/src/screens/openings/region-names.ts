import type { ChartColumn } from "@cornerway/engine";
import { verdicts, type Verdict } from "@cornerway/schema";
import { sharedArea, type BoxPx } from "../../drawing/label/place-labels.ts";
import { textWidthPx } from "../../drawing/label/text-width.ts";
import type { ScreenPoint } from "../../drawing/view-transform.ts";
import { levelsOf } from "./chart-regions.ts";
import type { ChartScale } from "./chart-scale.ts";

/** A region's name: the left end of its symbol and the middle of its height, px. */
export type RegionName = {
  readonly verdict: Verdict;
  readonly words: string;
  readonly xPx: number;
  readonly yPx: number;
  /** Where in the region a leader from a name that stands beside it ends; null for a name within. */
  readonly tip: ScreenPoint | null;
};

export const regionNameSizePx = 12;
/** From the left end of the symbol to the words, px. */
export const symbolRoomPx = 22;
const HIGH_PX = 20;
const AIR_PX = 6;
/** A region smaller than this has no name: the table tells of it. */
const LEAST_PX = 8;

export type NamedChart = {
  readonly columns: readonly ChartColumn[];
  readonly scale: ChartScale;
  /** Where the chart ends, px. */
  readonly rightPx: number;
  readonly wordsOf: (verdict: Verdict) => string;
  /** Where no name may stand. */
  readonly kept: readonly BoxPx[];
};

type Place = { xPx: number; yPx: number; roomPx: number; fromPx: number; toPx: number };

/**
 * Names of the regions. Each stands within its region where it is wide and tall enough for it, else beside it with a short
 * leader, else over the chart with a longer one: never over a region in which an opening may be cut.
 */
export function regionNames(chart: NamedChart): RegionName[] {
  const { columns, scale, wordsOf, kept } = chart;
  const taken = [...kept];
  const isFree = (box: BoxPx) => taken.every((other) => sharedArea(box, other) === 0);
  return verdicts.flatMap((verdict): RegionName[] => {
    const words = wordsOf(verdict);
    const widthPx = symbolRoomPx + textWidthPx(words, regionNameSizePx) + 2 * AIR_PX;
    const places = placesOf(columns, verdict, scale, widthPx);
    const found =
      within(places, widthPx, isFree) ?? beside(places, widthPx, chart, isFree) ?? over(places, widthPx, chart, isFree);
    if (found === null) return [];
    taken.push(boxOf(found, widthPx));
    return [{ verdict, words, ...found }];
  });
}

type Found = Pick<RegionName, "xPx" | "yPx" | "tip">;

const boxOf = ({ xPx, yPx }: Pick<Found, "xPx" | "yPx">, widthPx: number): BoxPx => ({
  left: xPx - AIR_PX,
  right: xPx - AIR_PX + widthPx,
  top: yPx - HIGH_PX / 2,
  bottom: yPx + HIGH_PX / 2,
});

/** The tallest place of the region that holds the name whole. */
function within(places: readonly Place[], widthPx: number, isFree: (box: BoxPx) => boolean): Found | null {
  const spots = places
    .filter(({ fromPx, toPx, roomPx }) => toPx - fromPx >= widthPx && roomPx >= HIGH_PX)
    .toSorted((a, b) => b.roomPx - a.roomPx)
    .map(({ xPx, yPx, fromPx, toPx }): Found => {
      const left = Math.min(Math.max(xPx - widthPx / 2, fromPx), toPx - widthPx);
      return { xPx: left + AIR_PX, yPx, tip: null };
    });
  return spots.find((spot) => isFree(boxOf(spot, widthPx))) ?? null;
}

/** Farther than this a name says no more of what it stands beside than one over the chart does, px. */
const BESIDE_PX = 190;
const GRID_PX = 10;

/** On the chart near the tallest place of the region: on bare paper, or where nothing may be cut. */
function beside(
  places: readonly Place[],
  widthPx: number,
  { columns, scale, rightPx }: NamedChart,
  isFree: (box: BoxPx) => boolean,
): Found | null {
  const tip = tallestPlace(places);
  if (tip === null) return null;
  const open = openBoxes(columns, scale);
  const spots = nearSpots.map(({ rightwards, up }): Found => {
    const xPx = tip.xPx + (rightwards < 0 ? rightwards - widthPx : rightwards) + AIR_PX;
    return { xPx, yPx: tip.yPx - up, tip };
  });
  const isOnChart = ({ left, right, top, bottom }: BoxPx) =>
    left >= scale.leftPx && right <= rightPx && top >= scale.topPx && bottom <= scale.basePx - 4;
  return (
    spots.find((spot) => {
      const box = boxOf(spot, widthPx);
      return isOnChart(box) && isFree(box) && open.every((other) => sharedArea(box, other) === 0);
    }) ?? null
  );
}

/** How far the near end of a name stands from the tip of its leader, nearest first, px. */
const nearSpots = [-1, 1]
  .flatMap((sign) =>
    Array.from({ length: 17 }, (_, x) => ({ sign, x })).flatMap(({ x }) =>
      Array.from({ length: 37 }, (_, y) => ({ rightwards: sign * (14 + x * GRID_PX), up: (y - 18) * GRID_PX })),
    ),
  )
  .map((spot) => ({ ...spot, farPx: Math.hypot(spot.rightwards, spot.up) }))
  .filter(({ farPx }) => farPx <= BESIDE_PX)
  .toSorted((a, b) => a.farPx - b.farPx);

/** Where an opening may be cut, column by column, px. */
function openBoxes(columns: readonly ChartColumn[], scale: ChartScale): BoxPx[] {
  return columns.flatMap((column, index) => {
    const left = scale.xPx(columns[index - 1]?.centreMm ?? column.centreMm);
    const right = scale.xPx(columns[index + 1]?.centreMm ?? column.centreMm);
    return levelsOf(column)
      .filter(({ verdict, from }) => verdict !== "does not work" && from < scale.mostMm)
      .map(({ from, to }) => ({ left, right, top: scale.yPx(to), bottom: scale.yPx(from) }));
  });
}

/** The middle of the tallest place of a region that is tall enough to be named. */
function tallestPlace(places: readonly Place[]): ScreenPoint | null {
  const [tallest] = places.toSorted((a, b) => b.roomPx - a.roomPx);
  if (tallest === undefined || tallest.roomPx < LEAST_PX) return null;
  return { xPx: tallest.xPx, yPx: tallest.yPx };
}

/** Over the chart, as near above the tallest place of the region as there is room. */
function over(
  places: readonly Place[],
  widthPx: number,
  { scale: { leftPx, topPx }, rightPx }: NamedChart,
  isFree: (box: BoxPx) => boolean,
): Found | null {
  const tip = tallestPlace(places);
  if (tip === null) return null;
  const most = Math.max(leftPx, rightPx - widthPx);
  const spots = asidePx.map((aside): Found => {
    const xPx = Math.min(Math.max(leftPx, tip.xPx + aside), most) + AIR_PX;
    return { xPx, yPx: topPx - HIGH_PX / 2 - 2, tip };
  });
  return spots.find((spot) => isFree(boxOf(spot, widthPx))) ?? null;
}

const asidePx = [0, 1, -1, 2, -2, 3, -3, 4, -4].map((step) => step * 60 + 14);

/** The middle of the region in each column, and how far it reaches level from there to either side with room for a name. */
function placesOf(columns: readonly ChartColumn[], verdict: Verdict, scale: ChartScale, widthPx: number): Place[] {
  const spans = columns.map((column) =>
    levelsOf(column)
      .filter((level) => level.verdict === verdict && level.from < scale.mostMm)
      .map(({ from, to }) => ({ foot: scale.yPx(from), head: scale.yPx(to) })),
  );
  const at = (index: number) => scale.xPx(columns[index]?.centreMm ?? 0);
  return spans.flatMap((own, index) =>
    own.map(({ foot, head }): Place => {
      const yPx = (foot + head) / 2;
      const holds = (other: number) =>
        spans[other]?.some((span) => span.head <= yPx - HIGH_PX / 2 && span.foot >= yPx + HIGH_PX / 2) === true;
      let [first, last] = [index, index];
      while (holds(first - 1) && at(index) - at(first - 1) < widthPx) first -= 1;
      while (holds(last + 1) && at(last + 1) - at(index) < widthPx) last += 1;
      return { xPx: at(index), yPx, roomPx: foot - head, fromPx: at(first), toPx: at(last) };
    }),
  );
}
