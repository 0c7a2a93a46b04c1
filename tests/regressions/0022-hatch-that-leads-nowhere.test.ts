import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const g = { id: "g", type: "1CC" as const, x: 0, y: 0 };
const f = { ...g, id: "f", z: 2591 };
const hatch = { use: "hatch", at: 2000, sill: 700, width: 1500, height: 1000 } as const;
const roof = { ...hatch, id: "o1", in: "g", face: "roof" } as const;
const floor = { ...hatch, id: "o2", in: "f", face: "floor" } as const;
const blocked = (cuts: Parameters<typeof schemeOf>[0]["cuts"], upper: typeof f & { turn?: number } = f) =>
  factsOf(
    assess(schemeOf({ units: [g, upper], pads: padsUnder(g), ...(cuts === undefined ? {} : { cuts }) })),
    "hatch-blocked",
  );

it("a hatch in the roof under an uncut floor leads nowhere, and so does one in a floor on an uncut roof", () => {
  expect(blocked([roof])).toMatchObject([
    { id: "hatch-blocked:o1+g+f", by: "floor", clearMm: 0, verdict: "not checked" },
  ]);
  expect(blocked([floor])).toMatchObject([{ id: "hatch-blocked:o2+f+g", by: "roof", clearMm: 0 }]);
});

it("a pair one above the other is clear, whichever way round the upper unit lies", () => {
  expect(blocked([roof, floor])).toEqual([]);
  // Turned half round, a place u from the front end lies 6058 − u, v lies 2438 − v: 2558 to 4058 and 738 to 1738.
  expect(blocked([roof, { ...floor, at: 6058 - 3500, sill: 2438 - 1700 }], { ...f, turn: 180 })).toEqual([]);
});

// Openings 1500 × 1000: moved 900 mm along, 600 mm of length are left, less than the 1000 of width; moved 300, 1200 are.
it("a pair out of line is told once, with the clear width left", () => {
  expect(blocked([roof, { ...floor, at: 2900 }])).toMatchObject([
    { elements: ["o2", "f", "g"], by: "roof", clearMm: 600 },
  ]);
});

it("a pair out of line that leaves the whole width is clear", () => {
  expect(blocked([roof, { ...floor, at: 2300 }])).toEqual([]);
});

it("a small hatch within a large one is clear; a roof hatch to the open air is no concern", () => {
  expect(blocked([roof, { ...floor, at: 2300, width: 800, sill: 800, height: 800 }])).toEqual([]);
  expect(factsOf(assess(schemeOf({ units: [g], pads: padsUnder(g), cuts: [roof] })), "hatch-blocked")).toEqual([]);
});
