import { pt } from "../paper/ink.ts";
import type { Box } from "../paper/shapes.ts";

/** Lines at 45° within a box, rising to the right, so far apart; `pair` sets a second one beside each. */
export function diagonals({ x, y, width, height }: Box, spacing: number, pair = 0): string {
  let d = "";
  for (let from = -height + spacing / 2; from < width; from += spacing)
    for (const off of pair === 0 ? [0] : [0, pair]) d += rising(x, y, width, height, from + off);
  return d;
}

/** From the foot at `from` upwards to the right, cut off at the box. */
function rising(x: number, y: number, width: number, height: number, from: number): string {
  const start = Math.max(0, from);
  const end = Math.min(width, from + height);
  if (end <= start) return "";
  return `M${pt(x + start)} ${pt(y + height - (start - from))}L${pt(x + end)} ${pt(y + height - (end - from))}`;
}

/** Places scattered in a box, the same for the same seed (a linear congruence; Numerical Recipes' constants, from memory). */
function scattered({ x, y, width, height }: Box, count: number, seed: number): { x: number; y: number }[] {
  let state = (seed * 2654435761) % 4294967296;
  const next = () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
  return Array.from({ length: count }, () => ({ x: x + next() * width, y: y + next() * height }));
}

/** Concrete: dots and small triangles. */
export function concrete(at: Box, seed: number): { dots: string; triangles: string } {
  const area = at.width * at.height;
  const inner = { x: at.x + 1.5, y: at.y + 1.5, width: Math.max(0, at.width - 3), height: Math.max(0, at.height - 3) };
  const dots = scattered(inner, Math.min(60, Math.ceil(area / 40)), seed)
    .map((p) => `M${pt(p.x)} ${pt(p.y)}h0.35`)
    .join("");
  const triangles = scattered(inner, Math.min(24, Math.ceil(area / 110)), seed + 7)
    .map((p) => `M${pt(p.x)} ${pt(p.y)}l2.6 -0.3l-1.3 -2.1Z`)
    .join("");
  return { dots, triangles };
}

/** The hatch under a ground line: clumps of five strokes leaning left, four leaning right. */
export function groundHatch(x0: number, x1: number, y: number): string {
  let d = "";
  for (let x = x0; x < x1 - 40; x += 52) {
    for (let at = 0; at < 5; at += 1) d += `M${pt(x + 8 + at * 3.1)} ${pt(y + 1.6)}l-5.4 5.6`;
    for (let at = 0; at < 4; at += 1) d += `M${pt(x + 26 + at * 3.1)} ${pt(y + 2.2)}l4.8 5`;
  }
  return d;
}
