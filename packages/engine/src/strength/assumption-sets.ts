import { usualAssumptions, type ModelAssumptions } from "../model/model-assumptions.ts";

/** One corner of the envelope: what the model takes for granted, and how that differs from the first set. */
export type AssumptionSet = {
  readonly id: AssumptionId;
  /** Solved for every run, or only for those that governed in the sets solved for all. */
  readonly solves: "every run" | "governing runs";
  readonly assumptions: ModelAssumptions;
  /** Absent: rigid. */
  readonly pads?: "soft";
};

export type AssumptionId =
  "locks at play" | "locks tied" | "diaphragms ×¼" | "diaphragms ×4" | "racking ×0.7" | "racking ×1.3" | "pads soft";

const diaphragms = (times: number): ModelAssumptions => ({
  ...usualAssumptions,
  floorShear: usualAssumptions.floorShear * times,
  roofShear: usualAssumptions.roofShear * times,
});

/** Sheets softer (holes, patches, broken welds) or stiffer (thicker than specified); common practice, no published source. */
const racking = (times: number): ModelAssumptions => ({
  ...usualAssumptions,
  sideSheet: { ...usualAssumptions.sideSheet, shear: usualAssumptions.sideSheet.shear * times },
  frontSheet: { ...usualAssumptions.frontSheet, shear: usualAssumptions.frontSheet.shear * times },
});

/** Walls at their softest: what the building leans by. */
export const softRacking: AssumptionSet = {
  id: "racking ×0.7",
  solves: "governing runs",
  assumptions: racking(0.7),
};

/** The envelope. The first set names the base; pads are rigid in all but the last, which is tied as soft ground matters most then. */
export const assumptionSets: readonly [AssumptionSet, ...AssumptionSet[]] = [
  { id: "locks at play", solves: "every run", assumptions: usualAssumptions },
  { id: "locks tied", solves: "every run", assumptions: { ...usualAssumptions, holds: "tied" } },
  { id: "diaphragms ×¼", solves: "governing runs", assumptions: diaphragms(1 / 4) },
  { id: "diaphragms ×4", solves: "governing runs", assumptions: diaphragms(4) },
  softRacking,
  { id: "racking ×1.3", solves: "governing runs", assumptions: racking(1.3) },
  { id: "pads soft", solves: "governing runs", assumptions: { ...usualAssumptions, holds: "tied" }, pads: "soft" },
];
