import type { Clause } from "../../working/working.ts";

/**
 * Anchors in a rectangle under a base plate, mm: how many, how far apart both ways, and from the outermost ones to the
 * concrete's edges on the four sides. Force at right angles to x is what `edge.right` and `edge.left` meet.
 */
export type AnchorGroup = {
  readonly count: number;
  readonly spacingXMm: number;
  readonly spacingYMm: number;
  readonly edge: {
    readonly leftMm: number;
    readonly rightMm: number;
    readonly frontMm: number;
    readonly backMm: number;
  };
  readonly depthMm: number;
  readonly diameterMm: number;
  readonly steelAreaMm2: number;
  readonly tensileMpa: number;
  readonly installed: "cast in, headed" | "post-installed";
  /** Net bearing area of one head, mm²; a post-installed anchor's pull-out is its maker's to state. */
  readonly headMm2?: number;
  readonly concreteMpa: number;
  readonly concreteThicknessMm: number;
  /** Concrete-controlled strengths in tension are cut to three quarters where the load is seismic (17.10). */
  readonly seismic: boolean;
};

/** A clause of ACI 318-19 chapter 17, from memory; both building code editions adopt it. */
export const aci = (place: string): Clause => ({ document: "ACI 318", edition: "2019", place, certainty: "memory" });
