import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, reactionOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// Three 20 ft units (1CC, 2591 mm high) stacked corner on corner on four pads, nothing cut.
// Tare: middle of 2150…2400 kg (range of carriers' tables, common practice) = 2275 kg; × 9.81 = 22.318 kN.
// By symmetry each corner takes a quarter of what is above it: 22.318/4 = 5.579, 11.159 and 16.738 kN.
const unit = { type: "1CC", x: 0, y: 0 } as const;
const stack = schemeOf({
  units: [
    { ...unit, id: "g1" },
    { ...unit, id: "f1", z: 2591 },
    { ...unit, id: "t1", z: 2 * 2591, turn: 180 },
  ],
  pads: padsUnder({ ...unit, id: "g1" }),
});

it("a stack corner on corner works as built, whichever end the doors are", () => {
  const assessment = assess(stack);
  expect(assessment.verdict).toBe("works as built");
  for (const id of ["g1", "f1", "t1"]) expect(verdictOf(assessment, id)).toBe("works as built");
  expect(assessment.scope).toBe("load path only, no strength checked");
});

it("stock locks serve between matching fittings with no gap and no offset", () => {
  const assessment = assess(stack);
  for (const bearing of assessment.bearings.filter(({ unitId }) => unitId !== "g1")) {
    expect(bearing).toMatchObject({ on: "fitting", joint: "lock", gapMm: 0, offsetXMm: 0, offsetYMm: 0 });
  }
});

it("each corner takes a quarter of what is above: 5.579, 11.159 and 16.738 kN", () => {
  const assessment = assess(stack);
  expect(bearingOf(assessment, "t1:front-left")?.forceKn).toBeCloseTo(5.579, 3);
  expect(bearingOf(assessment, "f1:front-left")?.forceKn).toBeCloseTo(11.159, 3);
  for (const at of [0, 1, 2, 3]) expect(reactionOf(assessment, `g1-pad-${at}`)).toBeCloseTo(16.738, 3);
});

it("loads and reactions close: 3 × 22.318 = 66.953 kN", () => {
  expect(assess(stack).statics).toMatchObject({ residualKn: 0 });
  expect(assess(stack).statics.loadKn).toBeCloseTo(66.953, 3);
  expect(assess(stack).statics.reactionKn).toBeCloseTo(66.953, 3);
});

it("a floor load of 2.4 kPa on the top unit adds 6.058 × 2.438 × 2.4 = 35.447 kN to it and a quarter to each pad", () => {
  const loaded = assess({ ...stack, loads: schemeOf({ units: [], loads: [{ in: "t1", pa: 2400 }] }).loads });
  expect(loaded.units.find(({ id }) => id === "t1")?.imposedKn).toBeCloseTo(35.447, 3);
  expect(reactionOf(loaded, "g1-pad-2")).toBeCloseTo(16.738 + 35.447 / 4, 3);
});
