import { usualFineness, type ChartColumn, type ChartStretch } from "@cornerway/engine";
import { verdicts, type Verdict } from "@cornerway/schema";
import { linePath, polygonPath } from "../../drawing/px-path.ts";
import type { ChartScale } from "./chart-scale.ts";

/** One verdict's area on the chart and the lines where it begins. */
export type ChartRegion = {
  readonly verdict: Verdict;
  readonly area: string;
  readonly edge: string;
  /** Where its name stands: in the middle of its tallest place; null where there is no room. */
  readonly name: NameSpot | null;
};

export type NameSpot = { readonly xPx: number; readonly yPx: number };

/** From left to right, px. */
export type StrokeSpan = { readonly fromPx: number; readonly toPx: number };

type Piece = { readonly verdict: Verdict; readonly points: readonly (readonly [number, number])[] };

/**
 * Areas of the chart. Between two columns with the same verdicts one above the other, edges run straight from one traced place to
 * the other; between others each column stands for itself half of the way. `kept`: where no name may stand; `strokes`: what runs the
 * whole height of the chart, which names keep clear of where they can.
 */
export function chartRegions(
  columns: readonly ChartColumn[],
  scale: ChartScale,
  kept: readonly NameSpot[] = [],
  strokes: readonly StrokeSpan[] = [],
): ChartRegion[] {
  const pieces = columns.flatMap((column, n) => {
    const next = columns[n + 1];
    return next === undefined ? [] : piecesBetween(column, next);
  });
  const taken = [...kept];
  return verdicts.flatMap((verdict): ChartRegion[] => {
    const own = pieces.filter((piece) => piece.verdict === verdict);
    if (own.length === 0) return [];
    const onField = own.map(({ points }) => points.map(([x, y]) => ({ xPx: scale.xPx(x), yPx: scale.yPx(y) })));
    const area = onField.map(polygonPath).join("");
    const edge = onField.flatMap(([a, b]) => (a && b ? [linePath(a.xPx, a.yPx, b.xPx, b.yPx)] : [])).join("");
    const name = nameSpot(columns, verdict, scale, taken, strokes);
    if (name !== null) taken.push(name);
    return [{ verdict, area, edge, name }];
  });
}

/** Stretches with the same verdict as one, edges halfway between the widths judged. */
function levelsOf({ stretches }: ChartColumn): { verdict: Verdict; from: number; to: number }[] {
  const levels: { verdict: Verdict; from: number; to: number }[] = [];
  for (const { verdict, fromMm, toMm, why } of stretches) {
    const last = levels.at(-1);
    if (why.kind === "member cut" || why.kind === "meets opening") {
      if (last !== undefined) last.to = (last.to + fromMm) / 2;
      break; // the corner post and the openings that are there have lines of their own
    }
    if (last?.verdict === verdict) last.to = toMm;
    else levels.push({ verdict, from: last === undefined ? fromMm : (fromMm + last.to) / 2, to: toMm });
  }
  levels.forEach((level, n) => {
    const next = levels[n + 1];
    if (next !== undefined) level.to = next.from;
  });
  return levels;
}

function piecesBetween(a: ChartColumn, b: ChartColumn): Piece[] {
  const [left, right] = [levelsOf(a), levelsOf(b)];
  const alike = left.length === right.length && left.every(({ verdict }, n) => verdict === right[n]?.verdict);
  if (alike)
    return left.map(({ verdict, from, to }, n): Piece => {
      const other = right[n] ?? { from, to };
      return {
        verdict,
        points: [
          [a.centreMm, from],
          [b.centreMm, other.from],
          [b.centreMm, other.to],
          [a.centreMm, to],
        ],
      };
    });
  const middle = (a.centreMm + b.centreMm) / 2;
  const own = (levels: typeof left, from: number, to: number): Piece[] =>
    levels.map((level) => ({
      verdict: level.verdict,
      points: [
        [from, level.from],
        [to, level.from],
        [to, level.to],
        [from, level.to],
      ],
    }));
  return [...own(left, a.centreMm, middle), ...own(right, middle, b.centreMm)];
}

const LEAST_ROOM_PX = 26;
/** Half of what a name takes, px. */
const NAME = { halfPx: 105, highPx: 26 };
/** What a name takes to either side of its spot, px. */
const REACH = { beforePx: 64, afterPx: 150 };

/** The tallest place that is clear of names already laid. */
function nameSpot(
  columns: readonly ChartColumn[],
  verdict: Verdict,
  scale: ChartScale,
  taken: readonly NameSpot[],
  strokes: readonly StrokeSpan[],
): NameSpot | null {
  const spots = columns.flatMap((column) =>
    levelsOf(column)
      .filter((level) => level.verdict === verdict && level.from < scale.mostMm)
      .map(({ from, to }) => {
        const [foot, head] = [scale.yPx(from), scale.yPx(to)];
        return { xPx: scale.xPx(column.centreMm), yPx: (foot + head) / 2, roomPx: foot - head };
      }),
  );
  const clear = spots.filter(
    ({ xPx, yPx, roomPx }) =>
      roomPx >= LEAST_ROOM_PX &&
      taken.every((name) => Math.abs(name.xPx - xPx) > NAME.halfPx * 2 || Math.abs(name.yPx - yPx) > NAME.highPx),
  );
  const free = clear.filter(({ xPx }) =>
    strokes.every(({ fromPx, toPx }) => xPx - REACH.beforePx > toPx || xPx + REACH.afterPx < fromPx),
  );
  const [tallest] = (free.length > 0 ? free : clear).toSorted((p, q) => q.roomPx - p.roomPx);
  return tallest === undefined ? null : { xPx: tallest.xPx, yPx: tallest.yPx };
}

/**
 * What the chart says of a place and width: by the nearest column, the nearest width it judged. Null where no column within
 * the spacing of the chart is traced yet, since a column further off speaks of another place.
 */
export function answerAt(
  columns: readonly ChartColumn[],
  { centreMm, widthMm }: { readonly centreMm: number; readonly widthMm: number },
): { readonly column: ChartColumn; readonly stretch: ChartStretch } | null {
  const [column] = columns.toSorted((a, b) => Math.abs(a.centreMm - centreMm) - Math.abs(b.centreMm - centreMm));
  if (column === undefined || Math.abs(column.centreMm - centreMm) > usualFineness.apartMm) return null;
  const stretch = column.stretches.find(({ toMm }) => widthMm <= toMm) ?? column.stretches.at(-1);
  return stretch === undefined ? null : { column, stretch };
}
