import type { windShapeLimits } from "@cornerway/schema";
import type { Clause } from "../working/working.ts";

/** What the wind procedure needs to know of a building's form. */
export type BuildingForm = {
  readonly lengthXMm: number;
  readonly lengthYMm: number;
  readonly heightMm: number;
  /** Footprint over the enclosing rectangle, 0 to 1. */
  readonly planFill: number;
  /** Highest roof less the lowest one. */
  readonly roofStepMm: number;
  /** Units not parallel to the building's axes. */
  readonly turnedOff: readonly string[];
  /** Undersides open to the wind over the plan area. */
  readonly soffitShare: number;
  /** Groups of units that do not touch each other. */
  readonly blocks: number;
};

export type ShapeLimitCode = (typeof windShapeLimits)[number];

/** One limit of the procedure, tried: the number that decides and what it may be. */
export type ShapeLimit = {
  readonly code: ShapeLimitCode;
  readonly holds: boolean;
  readonly value: number;
  readonly limit: number;
  readonly unit: "1" | "mm";
  readonly clause: Clause;
};
