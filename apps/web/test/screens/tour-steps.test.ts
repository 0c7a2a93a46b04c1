import { emptyScheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { tourSteps, type TourState } from "../../src/screens/scheme/tour/tour-steps.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const state = (over: Partial<TourState>): TourState => ({
  ...{ scheme: emptyScheme, noteChosen: false, canRedo: false, revision: null },
  ...over,
});
const g1 = unitAt("g1", "G1", 0, 0, 0);
const f1 = unitAt("f1", "F1", 0, 0, 2896);
const begun = state({ scheme: schemeOf([g1, f1]) });

/** What each step waits for, in the order of the tour. */
const deeds: [string, TourState][] = [
  ["Set the first container", state({ scheme: schemeOf([g1]) })],
  ["Stack another on it", state({ scheme: schemeOf([g1, f1]) })],
  ["Shift the upper one", state({ scheme: schemeOf([g1, { ...f1, xUm: 900_000 }]) })],
  ["Read the mark", state({ noteChosen: true })],
  ["Take the move back", state({ canRedo: true })],
  ["Send it", state({ revision: "A" })],
];

describe("the first steps", () => {
  it("are place, stack, shift, read, take back, send", () => {
    expect(tourSteps.map(({ heading }) => heading)).toEqual(deeds.map(([heading]) => heading));
  });

  it.each(deeds)("%s: waits for it, and sees it", (heading, after) => {
    const step = tourSteps.find((each) => each.heading === heading);
    expect(step?.isDone(after, begun)).toBe(true);
    expect(step?.isDone(state({}), begun)).toBe(false);
  });

  it("two containers side by side are no stack", () => {
    const beside = state({ scheme: schemeOf([g1, unitAt("g2", "G2", 0, 2438, 0)]) });
    expect(tourSteps[1]?.isDone(beside, begun)).toBe(false);
  });
});
