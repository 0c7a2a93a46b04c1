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
 * Names of the regions. Each stands within its region where it is wide and tall enough for it, else over the chart with a
 * leader to the middle of it: never over another region.
 */
export function regionNames(chart: NamedChart): RegionName[] {
  const { columns, scale, wordsOf, kept } = chart;
  const taken = [...kept];
  const isFree = (box: BoxPx) => taken.every((other) => sharedArea(box, other) === 0);
  return verdicts.flatMap((verdict): RegionName[] => {
    const words = wordsOf(verdict);
    const widthPx = symbolRoomPx + textWidthPx(words, regionNameSizePx) + 2 * AIR_PX;
    const places = placesOf(columns, verdict, scale, widthPx);
    const found = within(places, widthPx, isFree) ?? beside(places, widthPx, chart, isFree);
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

/** Over the chart, as near above the tallest place of the region as there is room. */
function beside(
  places: readonly Place[],
  widthPx: number,
  { scale: { leftPx, topPx }, rightPx }: NamedChart,
  isFree: (box: BoxPx) => boolean,
): Found | null {
  const [tallest] = places.toSorted((a, b) => b.roomPx - a.roomPx);
  if (tallest === undefined || tallest.roomPx < LEAST_PX) return null;
  const tip = { xPx: tallest.xPx, yPx: tallest.yPx };
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
