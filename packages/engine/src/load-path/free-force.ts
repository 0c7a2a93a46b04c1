import type { FreeLoad } from "@cornerway/schema";
import { toKn } from "../units.ts";
import type { PointForce } from "./resultant.ts";

/** A free load as its resultant; `stays` tells permanent ones from those that come and go. */
export type FreeForce = PointForce & { readonly stays: boolean };

/**
 * The downward resultant of a free load in the unit's own plan, from its middle, mm. None for wind, which is no part of
 * the run-down; forces along the unit are not either.
 */
export function freeForce(load: FreeLoad, lengthMm: number, widthMm: number): FreeForce | undefined {
  if (load.case === "wind") return undefined;
  const { forceN, uMm, vMm } = onSurface(load);
  return {
    forceKn: toKn(forceN),
    xMm: uMm - lengthMm / 2,
    yMm: vMm - widthMm / 2,
    stays: load.case === "finish" || load.case === "plant",
  };
}

/** Total and middle, mm from the front end and the right side. */
function onSurface(load: FreeLoad): { forceN: number; uMm: number; vMm: number } {
  const { u0, u1, v0, v1 } = freeLoadExtent(load);
  const middle = { uMm: (u0 + u1) / 2, vMm: (v0 + v1) / 2 };
  const along = u1 - u0;
  const across = v1 - v0;
  switch (load.shape) {
    case "point":
      return { forceN: load.downN, ...middle };
    case "line":
      return { forceN: (load.downNPerM * Math.sqrt(along * along + across * across)) / 1000, ...middle };
    case "area":
      return { forceN: (load.pressurePa * along * across) / 1e6, ...middle };
  }
}

/** The rectangle around a free load, mm from the front end and the right side of its unit. */
export function freeLoadExtent(load: FreeLoad): { u0: number; u1: number; v0: number; v1: number } {
  const [x, y] = [load.xUm / 1000, load.yUm / 1000];
  switch (load.shape) {
    case "point":
      return { u0: x, u1: x, v0: y, v1: y };
    case "line": {
      const [toX, toY] = [load.toXUm / 1000, load.toYUm / 1000];
      return { u0: Math.min(x, toX), u1: Math.max(x, toX), v0: Math.min(y, toY), v1: Math.max(y, toY) };
    }
    case "area":
      return { u0: x, u1: x + load.lengthUm / 1000, v0: y, v1: y + load.widthUm / 1000 };
  }
}
