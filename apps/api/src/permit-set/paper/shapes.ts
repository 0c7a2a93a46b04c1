import { pt, type PathInk, type Pen, type TextInk, type Tone } from "./ink.ts";

export type At = { x: number; y: number };
export type Box = { x: number; y: number; width: number; height: number };

type Stroke = Omit<PathInk, "kind" | "d">;

export const lineD = (a: At, b: At): string => `M${pt(a.x)} ${pt(a.y)}L${pt(b.x)} ${pt(b.y)}`;

export const polylineD = (points: readonly At[]): string =>
  `M${points.map(({ x, y }) => `${pt(x)} ${pt(y)}`).join("L")}`;

export const polygonD = (points: readonly At[]): string => `${polylineD(points)}Z`;

export const boxD = ({ x, y, width, height }: Box): string =>
  `M${pt(x)} ${pt(y)}H${pt(x + width)}V${pt(y + height)}H${pt(x)}Z`;

/** A circle of four cubic arcs (0.5523 of the radius: their usual best fit). */
export function circleD({ x, y }: At, r: number): string {
  const k = r * 0.5523;
  const p = (dx: number, dy: number) => `${pt(x + dx)} ${pt(y + dy)}`;
  return `M${p(r, 0)}C${p(r, k)} ${p(k, r)} ${p(0, r)}C${p(-k, r)} ${p(-r, k)} ${p(-r, 0)}C${p(-r, -k)} ${p(-k, -r)} ${p(0, -r)}C${p(k, -r)} ${p(r, -k)} ${p(r, 0)}Z`;
}

export const path = (d: string, stroke: Stroke): PathInk => ({ kind: "path", d, ...stroke });

export const line = (a: At, b: At, pen: Pen, more: Stroke = {}): PathInk => path(lineD(a, b), { pen, ...more });

export const rule = (x0: number, x1: number, y: number, pen: Pen = "fine", tone: Tone = "ink"): PathInk =>
  line({ x: x0, y }, { x: x1, y }, pen, { tone });

export const box = (at: Box, stroke: Stroke): PathInk => path(boxD(at), stroke);

type Lettering = Partial<Omit<TextInk, "kind" | "x" | "y" | "text">>;

/** A line of lettering, 8 pt unless said otherwise. */
export const text = (x: number, y: number, words: string, how: Lettering = {}): TextInk => ({
  kind: "text",
  x: pt(x),
  y: pt(y),
  text: words,
  face: "lettering",
  size: 8,
  ...how,
});

/** The small heading of a cell or column: capitals with room between. */
export const caption = (x: number, y: number, words: string, how: Lettering = {}): TextInk =>
  text(x, y, words.toUpperCase(), { size: 7, tracking: 0.5, tone: "graphite", ...how });
