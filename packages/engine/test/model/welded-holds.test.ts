import { describe, expect, it } from "vitest";
import { planHolds, type HoldCandidate, type HoldPlan } from "../../src/model/plan-holds.ts";

/** Four bearings of one unit that lies along x, 12 m between them, 2.26 m across. */
const bearings = (welded: readonly string[]): HoldCandidate[] =>
  (["front right", "front left", "seat right", "seat left"] as const).map((bearing) => ({
    ...{ bearing, of: "u1", onCorner: bearing.startsWith("front") },
    ...{ xMm: bearing.startsWith("front") ? 0 : 11_000, yMm: bearing.endsWith("right") ? -1130 : 1130 },
    ...(welded.includes(bearing) && { welded: true as const }),
  }));
const plan = (welded: readonly string[]): HoldPlan => {
  return { kind: "locks at play", stiffness: 1e6, candidates: bearings(welded) };
};
const both = { x: true, y: true };
const across = { x: false, y: true };
const none = new Set<string>();

describe("how a unit is held in plan with locks at play", () => {
  it("is by one bearing both ways and the farthest across where every one is a lock", () => {
    expect(Object.fromEntries(planHolds(plan([]), none).holds)).toEqual({ "front right": both, "seat right": across });
  });

  it("is across by both welded seats of a line: a weld has no play", () => {
    const { holds } = planHolds(plan(["seat right", "seat left"]), none);
    expect(Object.fromEntries(holds)).toEqual({ "front right": both, "seat right": across, "seat left": across });
  });

  it("is not by a weld beside a lock: either may come to bear first", () => {
    const { holds } = planHolds(plan(["seat left", "front left"]), none);
    expect(Object.fromEntries(holds)).toEqual({ "front right": both, "seat right": across });
  });

  it("never is along by more than one bearing, welded or not: rails are free to stretch", () => {
    const { holds } = planHolds(plan(["front right", "front left", "seat right", "seat left"]), none);
    expect([...holds.values()].filter(({ x }) => x)).toHaveLength(1);
    expect(holds.size).toBe(4);
  });

  it("leaves out a weld that is let go", () => {
    const { holds } = planHolds(plan(["seat right", "seat left"]), new Set(["seat left"]));
    expect(holds.has("seat left")).toBe(false);
  });
});
