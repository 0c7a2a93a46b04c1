import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// b, pushed 3 m along a, comes down with its tail on a's top rails, 3000 + 103.5 = 3103.5 mm from a's front end. A roof
// opening from 2500 to 4000 mm that runs over the right rail (roof v = 0 is the right side) takes that rail.
const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const of = (sill: number) =>
  assess(
    schemeOf({
      units: [a, { ...a, id: "b", x: 3000, z: 2896 }],
      pads: padsUnder(a),
      cuts: [{ id: "o1", in: "a", face: "roof", use: "hatch", at: 2500, sill, width: 1500, height: 900 }],
    }),
  );

it("a corner over a top rail that an opening in the roof has taken has no way to the ground there", () => {
  const assessment = of(0);
  expect(factsOf(assessment, "load-over-opening")).toMatchObject([
    { id: "load-over-opening:o1+a+b", railCut: true, verdict: "does not work" },
  ]);
  expect(factsOf(assessment, "corner-on-air")).toEqual([]);
  expect(verdictOf(assessment, "b")).toBe("does not work");
});

it("an opening clear of the rails takes nothing from under it", () => {
  expect(factsOf(of(700), "load-over-opening")).toEqual([]);
});
