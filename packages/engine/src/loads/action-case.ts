import type { Face, PointMm } from "@cornerway/schema";
import type { FaceRect } from "../catalog/container-dimensions.ts";
import type { LoadSymbol } from "./load-symbol.ts";

/** One action as it can happen: what it multiplies in combinations, and what it does where. */
export type ActionCase = {
  readonly id: string;
  readonly symbol: LoadSymbol;
  readonly loads: readonly ActionLoad[];
};

export type ActionLoad =
  /** The container's own weight, down, spread as its parts are. */
  | { readonly kind: "own weight"; readonly containerId: string; readonly weightN: number }
  /** Straight down on the floor's upper side or on the roof, over a patch of that face. */
  | { readonly kind: "on"; readonly containerId: string; readonly surface: "floor" | "roof"; readonly patch: Patch }
  /** Against a face along its inward normal; negative draws it outwards. */
  | { readonly kind: "against"; readonly containerId: string; readonly face: Face; readonly patch: Patch }
  /** At a point of the site frame, N in site axes; `surface`: what goes down in it lies on that face of its container. */
  | {
      readonly kind: "point";
      readonly elementId: string;
      readonly surface?: "floor" | "roof";
      readonly at: PointMm;
      readonly xN: number;
      readonly yN: number;
      readonly zN: number;
    }
  /** A bearing or support that is built or goes down by so much, mm, down positive. */
  | { readonly kind: "movement"; readonly elementId: string; readonly downMm: number };

/** Pressure over a rectangle of a face: at its (u0, v0) corner, and how it grows along u and v, Pa and Pa/mm. */
export type Patch = {
  readonly rect: FaceRect;
  readonly pressurePa: number;
  readonly alongUPaPerMm: number;
  readonly alongVPaPerMm: number;
};

export const evenPatch = (rect: FaceRect, pressurePa: number): Patch => ({
  rect,
  pressurePa,
  alongUPaPerMm: 0,
  alongVPaPerMm: 0,
});

/** The force of a patch, N: mean pressure times area. */
export function patchForceN({ rect, pressurePa, alongUPaPerMm, alongVPaPerMm }: Patch): number {
  const u = rect.u1 - rect.u0;
  const v = rect.v1 - rect.v0;
  return ((pressurePa + (alongUPaPerMm * u) / 2 + (alongVPaPerMm * v) / 2) * u * v) / 1e6;
}
