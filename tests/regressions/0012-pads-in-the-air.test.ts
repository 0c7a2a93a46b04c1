import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// Pads of these schemes are 600 mm deep: with their tops at 3000 mm their undersides hang 2400 mm above the ground.
const a = { id: "a", type: "1AAA" as const, x: 0, y: 0, z: 3000 };
const b = { ...a, id: "b", z: 3000 + 2896 };

it("a stack on pads in the air has no way to the ground, though every corner bears", () => {
  const assessment = assess(schemeOf({ units: [a, b], pads: padsUnder(a, 3000) }));
  expect(factsOf(assessment, "pad-off-ground").map(({ aboveMm }) => aboveMm)).toEqual([2400, 2400, 2400, 2400]);
  expect([verdictOf(assessment, "a"), verdictOf(assessment, "b")]).toEqual(["does not work", "does not work"]);
});

it("a pad on a pad on the ground is no pad in the air", () => {
  const low = padsUnder(a, 300).map((pad) => ({ ...pad, id: `${pad.id}-low` }));
  const assessment = assess(schemeOf({ units: [{ ...a, z: 900 }], pads: [...padsUnder(a, 900), ...low] }));
  expect(factsOf(assessment, "pad-off-ground")).toEqual([]);
  expect(factsOf(assessment, "pad-holds-nothing")).toEqual([]);
});
