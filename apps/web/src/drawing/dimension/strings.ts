import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { placeLabels, type Label, type Spot } from "../label/place-labels.ts";
import { dimensionChain } from "./dimension-chain.ts";

/** A string of dimensions beside a view: its slashes along the line, where the line runs, its figures. */
export type DimensionLine = { key: string; upright: boolean; placesPx: readonly number[]; atPx: number };
export type DimensionLabel = Label & { colour: string; fontWeight: number };
export type DimensionStrings = { lines: readonly DimensionLine[]; labels: readonly DimensionLabel[] };

/** Px between two strings, one outside the other: a figure stands clear of the line inside its own. */
export const stringStepPx = 19;

/** Where a string runs: along the paper from `toPx`, at `atPx` across it. */
type StringPlace = {
  key: string;
  upright?: boolean;
  atPx: number;
  toPx: (atMm: number) => number;
  units: UnitSystem;
  /** Px from the line to its rows of figures, the first one first. */
  rows?: readonly number[];
};

/** A string through rising places; none where they are fewer than two. */
export function dimensionString(placesMm: readonly number[], place: StringPlace): DimensionStrings {
  const { key, upright = false, atPx, toPx, rows = figureRowsPx.eitherSide } = place;
  if (placesMm.length < 2) return { lines: [], labels: [] };
  const labels = dimensionChain(placesMm, place.units).map(({ fromMm, toMm, text }) => ({
    ...{ key: `${key}-${fromMm}`, text, sizePx: 11, colour: ink.graphite, fontWeight: 400 },
    spots: (upright ? uprightSpots : levelSpots)(toPx((fromMm + toMm) / 2), atPx, rows),
  }));
  return { lines: [{ key, upright, placesPx: placesMm.map(toPx), atPx }], labels };
}

/**
 * Strings that have room for every figure of theirs, from the building outwards, each a step farther than the last, the
 * last no farther than `toPx`.
 */
export function stacked(
  strings: readonly ((atPx: number) => DimensionStrings)[],
  fromPx: number,
  stepPx: number,
  toPx = Infinity,
): DimensionStrings {
  let atPx = fromPx;
  const kept: DimensionStrings[] = [];
  for (const string of strings) {
    if (atPx > toPx) break;
    const drawn = string(atPx);
    if (drawn.lines.length === 0 || placeLabels(drawn.labels, []).length < drawn.labels.length) continue;
    kept.push(drawn);
    atPx += stepPx;
  }
  return together(kept);
}

export const together = (strings: readonly DimensionStrings[]): DimensionStrings => ({
  lines: strings.flatMap(({ lines }) => lines),
  labels: strings.flatMap(({ labels }) => labels),
});

/** Over its line, in a second row where a neighbour takes the room: over the first, or under the line where that is free. */
const levelSpots = (xPx: number, yPx: number, rows: readonly number[]): Spot[] =>
  rows.map((off) => ({ xPx, yPx: yPx + off, anchor: "middle" }));

const uprightSpots = (yPx: number, xPx: number, rows: readonly number[]): Spot[] =>
  rows.map((off) => ({ xPx: xPx + off, yPx, anchor: "middle", turned: true }));

/** Px from a line to the feet of its figures, before it and behind it; outwards of a building, never over it. */
export const figureRowsPx = { eitherSide: [-5, 13], outwards: [-5, -17] } as const;
