import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 45 ft unit on a 40 ft one: its inner fittings stand at the 40 ft spacing, fitting on fitting, and its ends run out
// (13 509 − 11 985)/2 = 762 mm either way. Tare 4600…4900 kg (common practice), middle 4750 kg × 9.81 = 46.598 kN: half
// on each line, by symmetry 23.299 kN.
const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const assessment = assess(schemeOf({ units: [a, { id: "b", type: "1EEE", x: 0, y: 0, z: 2896 }], pads: padsUnder(a) }));

it("each end runs out 762 mm beyond its line, which takes half of the weight", () => {
  const overhangs = factsOf(assessment, "overhang");
  expect(overhangs).toHaveLength(2);
  for (const { lengthMm, bearingKn, tailReactionKn } of overhangs) {
    expect(lengthMm).toBeCloseTo(762, 6);
    expect(bearingKn).toBeCloseTo(23.299, 2);
    expect(tailReactionKn).toBeCloseTo(23.299, 2);
  }
});

it("a rail beside the inner fitting does not bear as well, so nothing rocks", () => {
  expect(assessment.bearings.filter(({ unitId, on }) => unitId === "b" && on !== "air")).toHaveLength(4);
  expect(factsOf(assessment, "rocks")).toEqual([]);
});
