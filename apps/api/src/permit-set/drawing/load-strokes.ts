import { pathStrokes, type DrawnStretch, type ElevationModel, type PathStroke, type Side } from "@cornerway/engine";
import type { Ink } from "../paper/ink.ts";
import { path, polygonD, type At } from "../paper/shapes.ts";
import type { View } from "../paper/view.ts";
import type { Written } from "../written.ts";
import { label } from "./signs.ts";

/** Width of a stroke, pt for each kN where one metre is 50 × 0.75 pt; it never is less or more than these. */
const perKn = 0.122 * 0.75;
const atPtPerM = 50 * 0.75;
const least = 0.9;
export const widest = 18;

export const strokeWidth = (kn: number, view: View): number =>
  Math.min(widest, Math.max(least, (perKn * Math.abs(kn) * view.length(1000)) / atPtPerM));

/** The way down on one elevation: a stroke as wide as its force, its figure at its foot, a long break where it leaves the corners. */
export function strokesInk(
  way: { readonly path: readonly DrawnStretch[] },
  side: Side,
  model: ElevationModel,
  view: View,
  say: Written,
): Ink[] {
  const strokes = pathStrokes(way, side, model.faces, model.posts);
  const taken: At[] = [];
  return [
    ...strokes.map((stroke) => strokeInk(stroke, view)),
    ...strokes.flatMap((stroke) => figureInk(stroke, view, say, taken)),
  ];
}

/** The first spot beside or above a place that no other figure has; the last one where all are taken. */
function freeSpot(at: At, aside: number, taken: At[]): At {
  const tried = [0, 1, 2, 3, 4].flatMap((up) => [aside, -aside].map((dx) => ({ x: at.x + dx, y: at.y - 5 - up * 9 })));
  const free = tried.find((spot) => taken.every(({ x, y }) => Math.abs(x - spot.x) > 30 || Math.abs(y - spot.y) > 8));
  const spot = free ?? { x: at.x + aside, y: at.y - 5 };
  taken.push(spot);
  return spot;
}

const stubPt = 11;

function ends({ from, to, stub }: PathStroke, view: View): { head: At; foot: At } {
  const [head, foot] = [view.toPaper(from), view.toPaper(to)];
  return stub ? { head: foot, foot: { x: foot.x, y: foot.y + stubPt } } : { head, foot };
}

function strokeInk(stroke: PathStroke, view: View): Ink {
  const { head, foot } = ends(stroke, view);
  const long = Math.sqrt((foot.x - head.x) ** 2 + (foot.y - head.y) ** 2);
  if (long === 0) return path("M0 0", { fill: "ink" });
  const [nx, ny] = [-(foot.y - head.y) / long, (foot.x - head.x) / long];
  const [a, b] = [strokeWidth(stroke.stretch.forceTopKn, view) / 2, strokeWidth(stroke.stretch.forceFootKn, view) / 2];
  const halves = [{ share: 0, half: a }, ...onTheWay(stroke, view), { share: 1, half: b }];
  const edge = (side: 1 | -1): At[] =>
    halves.map(({ share, half }) => ({
      x: head.x + (foot.x - head.x) * share + side * nx * half,
      y: head.y + (foot.y - head.y) * share + side * ny * half,
    }));
  const d = polygonD([...edge(1), ...edge(-1).toReversed()]);
  return stroke.added ? path(d, { fill: "band", pen: "edge" }) : path(d, { fill: "ink" });
}

/** A solved upright takes up load on its way, not evenly from head to foot. */
function onTheWay({ stretch, stub }: PathStroke, view: View): { share: number; half: number }[] {
  const { from, to, alongKn } = stretch;
  const heightMm = from.zMm - to.zMm;
  if (alongKn === undefined || stub || heightMm <= 0) return [];
  return alongKn.slice(1, -1).map(({ zMm, forceKn }) => ({
    share: (from.zMm - zMm) / heightMm,
    half: strokeWidth(forceKn, view) / 2,
  }));
}

function figureInk(stroke: PathStroke, view: View, say: Written, taken: At[]): Ink[] {
  const { head, foot } = ends(stroke, view);
  const { stretch, breaks, figureAt } = stroke;
  const broken = breaks ? longBreak({ x: foot.x, y: foot.y - 9 }, strokeWidth(stretch.forceFootKn, view)) : [];
  if (figureAt === null) return broken;
  const at = figureAt === "foot" ? foot : head;
  const kn = figureAt === "foot" ? stretch.forceFootKn : stretch.forceTopKn;
  const aside = strokeWidth(kn, view) / 2 + 14;
  const words = `${say.force(Math.abs(kn))}${kn < 0 ? " up" : ""}`;
  return [...broken, ...label(freeSpot(at, aside, taken), words, { strong: true, size: 7 })];
}

/** A paper-coloured gap across the stroke between two kinked lines. */
function longBreak({ x, y }: At, width: number): Ink[] {
  const half = width / 2 + 4;
  const kinked = (dy: number) => [
    { x: x - half, y: y + dy },
    { x: x - 1.6, y: y + dy },
    { x: x - 0.6, y: y + dy - 3 },
    { x: x + 0.6, y: y + dy + 3 },
    { x: x + 1.6, y: y + dy },
    { x: x + half, y: y + dy },
  ];
  const [a, b] = [kinked(-1.4), kinked(1.4)];
  const lines = [a, b].map((points) =>
    points.map((p, at) => `${at === 0 ? "M" : "L"}${p.x.toFixed(2)} ${p.y.toFixed(2)}`).join(""),
  );
  return [path(polygonD([...a, ...b.toReversed()]), { fill: "paper" }), path(lines.join(""), { pen: "edge" })];
}
