import { usualFineness, type ChartColumn, type ChartReason, type ChartStretch } from "@cornerway/engine";
import { verdicts, type Verdict } from "@cornerway/schema";
import { linePath, polygonPath } from "../../drawing/px-path.ts";
import type { ChartScale } from "./chart-scale.ts";

/** One verdict's area on the chart and the lines where it begins. */
export type ChartRegion = { readonly verdict: Verdict; readonly area: string; readonly edge: string };

type Piece = { readonly verdict: Verdict; readonly points: readonly (readonly [number, number])[] };

/**
 * Areas of the chart. Between two columns with the same verdicts one above the other, edges run straight from one traced place to
 * the other; between others each column stands for itself half of the way.
 */
export function chartRegions(columns: readonly ChartColumn[], scale: ChartScale): ChartRegion[] {
  const pieces = columns.flatMap((column, n) => {
    const next = columns[n + 1];
    return next === undefined ? [] : piecesBetween(column, next);
  });
  return verdicts.flatMap((verdict): ChartRegion[] => {
    const own = pieces.filter((piece) => piece.verdict === verdict);
    if (own.length === 0) return [];
    const onField = own.map(({ points }) => points.map(([x, y]) => ({ xPx: scale.xPx(x), yPx: scale.yPx(y) })));
    const area = onField.map(polygonPath).join("");
    const edge = onField.flatMap(([a, b]) => (a && b ? [linePath(a.xPx, a.yPx, b.xPx, b.yPx)] : [])).join("");
    return [{ verdict, area, edge }];
  });
}

/** Widths of one column that are judged alike, mm. */
export type ChartLevel = { readonly verdict: Verdict; from: number; to: number };

/** Stretches with the same verdict as one, edges halfway between the widths judged. */
export function levelsOf({ stretches }: ChartColumn): ChartLevel[] {
  const levels: ChartLevel[] = [];
  for (const { verdict, fromMm, toMm, why } of stretches) {
    const last = levels.at(-1);
    if (hasOwnLine(why)) {
      if (last !== undefined) last.to = (last.to + fromMm) / 2;
      break;
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

/** Corner posts and fittings and the openings that are there have lines of their own on the chart; a rail that would be cut has none. */
const hasOwnLine = (why: ChartReason): boolean =>
  why.kind === "meets opening" || (why.kind === "member cut" && why.member.startsWith("corner "));

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
