import { STILL_MM } from "../numerics/tolerances.ts";
import type { PlanFrame } from "./place.ts";

/** A turned rectangle in plan, mm: its centre, the unit direction of its first side, and half of each side. */
export type PlanRect = {
  readonly cxMm: number;
  readonly cyMm: number;
  readonly ux: number;
  readonly uy: number;
  readonly halfUMm: number;
  readonly halfVMm: number;
};

export type PlanBounds = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };

/** The rectangle x0…x1 by y0…y1 of a local frame, mm, as it lies in the site. */
export function planRect(frame: PlanFrame, x0: number, x1: number, y0: number, y1: number): PlanRect {
  const x = (x0 + x1) / 2;
  const y = (y0 + y1) / 2;
  return {
    cxMm: frame.xMm + x * frame.cos - y * frame.sin,
    cyMm: frame.yMm + x * frame.sin + y * frame.cos,
    ux: frame.cos,
    uy: frame.sin,
    halfUMm: (x1 - x0) / 2,
    halfVMm: (y1 - y0) / 2,
  };
}

/**
 * How far two rectangles reach into each other, mm: the least push that would part them; negative is clear space
 * (a lower bound of it). Exact for any angle: two convex figures are apart if and only if the normal of one of their
 * sides parts them (separating axis theorem).
 */
export function overlapDepthMm(a: PlanRect, b: PlanRect): number {
  const dx = b.cxMm - a.cxMm;
  const dy = b.cyMm - a.cyMm;
  return Math.min(
    depthAlong(a, b, dx, dy, a.ux, a.uy),
    depthAlong(a, b, dx, dy, -a.uy, a.ux),
    depthAlong(a, b, dx, dy, b.ux, b.uy),
    depthAlong(a, b, dx, dy, -b.uy, b.ux),
  );
}

/** How far `inner` reaches past the sides of `outer`, mm; negative is how far it lies within. */
export function reachPastMm(inner: PlanRect, outer: PlanRect): number {
  const { u, v } = inRect(outer, inner.cxMm, inner.cyMm);
  return Math.max(
    Math.abs(u) + reach(inner, outer.ux, outer.uy) - outer.halfUMm,
    Math.abs(v) + reach(inner, -outer.uy, outer.ux) - outer.halfVMm,
  );
}

/** Whether a point lies in the rectangle or within `marginMm` of its sides. */
export function holdsPoint(rect: PlanRect, xMm: number, yMm: number, marginMm = 0): boolean {
  const { u, v } = inRect(rect, xMm, yMm);
  return Math.abs(u) <= rect.halfUMm + marginMm && Math.abs(v) <= rect.halfVMm + marginMm;
}

/** The part of a straight line from (x0, y0) to (x1, y1) that lies in the rectangle, as shares 0…1 of its length. */
export function clipLine(
  rect: PlanRect,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): { from: number; to: number } | undefined {
  const start = inRect(rect, x0, y0);
  const end = inRect(rect, x1, y1);
  const alongU = clipSlab(start.u, end.u, rect.halfUMm);
  const alongV = clipSlab(start.v, end.v, rect.halfVMm);
  if (alongU === undefined || alongV === undefined) return undefined;
  const from = Math.max(alongU.from, alongV.from);
  const to = Math.min(alongU.to, alongV.to);
  return from < to ? { from, to } : undefined;
}

/** The four corners of a rectangle, anticlockwise from the start of both sides. */
export const rectCorners = ({ cxMm, cyMm, ux, uy, halfUMm, halfVMm }: PlanRect): { xMm: number; yMm: number }[] =>
  [
    [-halfUMm, -halfVMm],
    [halfUMm, -halfVMm],
    [halfUMm, halfVMm],
    [-halfUMm, halfVMm],
  ].map(([u = 0, v = 0]) => ({ xMm: cxMm + u * ux - v * uy, yMm: cyMm + u * uy + v * ux }));

/** The upright box around a rectangle. */
export function planBounds({ cxMm, cyMm, ux, uy, halfUMm, halfVMm }: PlanRect): PlanBounds {
  const x = halfUMm * Math.abs(ux) + halfVMm * Math.abs(uy);
  const y = halfUMm * Math.abs(uy) + halfVMm * Math.abs(ux);
  return { x0: cxMm - x, y0: cyMm - y, x1: cxMm + x, y1: cyMm + y };
}

function depthAlong(a: PlanRect, b: PlanRect, dx: number, dy: number, nx: number, ny: number): number {
  return reach(a, nx, ny) + reach(b, nx, ny) - Math.abs(dx * nx + dy * ny);
}

const reach = ({ ux, uy, halfUMm, halfVMm }: PlanRect, nx: number, ny: number): number =>
  halfUMm * Math.abs(ux * nx + uy * ny) + halfVMm * Math.abs(ux * ny - uy * nx);

function inRect({ cxMm, cyMm, ux, uy }: PlanRect, xMm: number, yMm: number): { u: number; v: number } {
  const x = xMm - cxMm;
  const y = yMm - cyMm;
  return { u: x * ux + y * uy, v: y * ux - x * uy };
}

function clipSlab(start: number, end: number, half: number): { from: number; to: number } | undefined {
  const run = end - start;
  if (Math.abs(run) < STILL_MM) return Math.abs(start) <= half ? { from: 0, to: 1 } : undefined;
  const one = (-half - start) / run;
  const other = (half - start) / run;
  const from = Math.max(0, Math.min(one, other));
  const to = Math.min(1, Math.max(one, other));
  return from < to ? { from, to } : undefined;
}
