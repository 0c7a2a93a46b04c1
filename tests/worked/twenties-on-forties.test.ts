import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

it("two 20 ft units end to end with a gap of 76 mm fill a 40 ft one: 2 × 6058 + 76 = 12 192", () => {
  expect(2 * 6058 + 76).toBe(12192);
  const forty = { id: "g1", type: "1AAA", x: 0, y: 0 } as const;
  const centre = (6058 + 76) / 2;
  const assessment = assess(
    schemeOf({
      units: [
        forty,
        { id: "f1", type: "1CCC", x: -centre, y: 0, z: 2896 },
        { id: "f2", type: "1CCC", x: centre, y: 0, z: 2896 },
      ],
      pads: padsUnder(forty),
    }),
  );
  // Outer holes: 3067 + 5853/2 = 5993.5 against 11 985/2 = 5992.5: 1 mm apart, within the play of a lock.
  expect(bearingOf(assessment, "f2:door-left")).toMatchObject({ on: "fitting", joint: "lock", offsetXMm: 1, gapMm: 0 });
  // Inner corners come down on the 40 ft unit's top rails near mid-length, 5992.5 − 140.5 = 5852 mm from a fitting.
  expect(bearingOf(assessment, "f2:front-left")).toMatchObject({ on: "rail", joint: "seat", gapMm: 6 });
  const [first] = factsOf(assessment, "borne-on-rail");
  expect(first?.crossings.map(({ toNearestFittingMm }) => toNearestFittingMm)).toEqual([5852, 5852]);
  expect(factsOf(assessment, "collision")).toEqual([]);
  expect(verdictOf(assessment, "g1")).toBe("not checked");
});

it("a 45 ft unit stands on a 40 ft one by its inner fittings, (13 509 − 11 985)/2 = 762 mm over at each end", () => {
  const forty = { id: "g1", type: "1AAA", x: 0, y: 0 } as const;
  const assessment = assess(
    schemeOf({ units: [forty, { id: "f1", type: "1EEE", x: 0, y: 0, z: 2896 }], pads: padsUnder(forty) }),
  );
  for (const name of ["front-left-inner", "front-right-inner", "door-left-inner", "door-right-inner"])
    expect(bearingOf(assessment, `f1:${name}`)).toMatchObject({ on: "fitting", joint: "lock", gapMm: 0 });
  expect(factsOf(assessment, "overhang").map(({ lengthMm }) => lengthMm)).toEqual([762, 762]);
});
