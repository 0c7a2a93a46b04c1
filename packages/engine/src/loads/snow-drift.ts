import type { Working } from "../working/working.ts";

/** A step between two roofs. Lengths run across the step, along the wind that makes the drift. */
export type RoofStep = {
  /** The upper roof's, which feeds the drift when the wind comes over it. */
  readonly upperLengthMm: number;
  /** The lower roof's, which feeds the drift when the wind blows against the step. */
  readonly lowerLengthMm: number;
  readonly stepMm: number;
};

/** A triangle of snow on the lower roof: highest at the step, nothing at its width, on top of the balanced snow. */
export type SnowDrift = {
  readonly peakPa: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly from: "leeward" | "windward";
  readonly workings: readonly Working[];
};

/** What lies on a flat roof everywhere. `uniform` is the case without drift (least load and rain included). */
export type RoofSnow = { readonly balanced: Working; readonly uniform: Working };
