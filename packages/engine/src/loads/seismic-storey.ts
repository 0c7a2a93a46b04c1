import type { Axis } from "./wind-shape.ts";

/** A wall or frame that resists along one axis. Stiffness and strength of the line as a whole, N/mm and N. */
export type LateralLine = {
  readonly id: string;
  /** The direction it resists. */
  readonly axis: Axis;
  /** Where it stands across that direction, mm. */
  readonly atMm: number;
  readonly lengthMm: number;
  readonly heightMm: number;
  readonly stiffnessNPerMm: number;
  readonly strengthN: number;
  /**
   * Its continuation below: `ground`, or how far off in plan the line that carries it stands; absent where none does.
   */
  readonly below?:
    { readonly kind: "ground" } | { readonly kind: "line"; readonly offsetMm: number; readonly lengthMm: number };
};

/** One storey as far as regularity is concerned, in the building's axes. */
export type SeismicStorey = {
  readonly id: string;
  readonly heightMm: number;
  readonly weightN: number;
  readonly centreXMm: number;
  readonly centreYMm: number;
  readonly outline: PlanOutline;
  /** Plan area of floor or roof, and of its holes, mm². */
  readonly diaphragmMm2: number;
  readonly holesMm2: number;
  /** Depth of re-entrant corners along each axis, mm. */
  readonly reentrantXMm: number;
  readonly reentrantYMm: number;
  /** Lines of force not parallel to either axis. */
  readonly skewedLines: number;
  readonly lines: readonly LateralLine[];
};

export type PlanOutline = {
  readonly x0Mm: number;
  readonly x1Mm: number;
  readonly y0Mm: number;
  readonly y1Mm: number;
};
