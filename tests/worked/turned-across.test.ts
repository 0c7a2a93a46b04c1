import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// Five units side by side, touching: 5 × 2438 = 12 190 mm. A 40 ft unit turned a quarter across them is 12 192 mm long:
// it ends flush, 1 mm proud at either end. Set at the row's west end, its two western corners come down on castings, the
// two eastern ones on the outer side rails, 2259 mm from the castings (hole spacing P).
const row = [0, 1, 2, 3, 4].map((at) => ({ id: `g${at + 1}`, type: "1CCC" as const, x: 3029, y: at * 2438 }));
const turned = { id: "t1", type: "1AAA" as const, x: 1219, y: 2 * 2438, z: 2896, turn: 90 };
// Each corner on a pad of its own as wide as there is room for: the hole centres of neighbours are 2438 − 2259 = 179 mm apart.
const pads = row.flatMap((unit) => padsUnder(unit)).map((pad) => ({ ...pad, width: 179 }));
const scheme = schemeOf({ units: [...row, turned], pads });

it("five touching boxes are 12 190 mm wide and do not collide", () => {
  expect(5 * 2438).toBe(12190);
  expect(factsOf(assess(scheme), "collision")).toEqual([]);
});

it("two corners land on castings and two on rails", () => {
  const corners = assess(scheme).bearings.filter(({ unitId, fitting }) => unitId === "t1" && fitting !== undefined);
  expect(corners.map(({ on }) => on).toSorted()).toEqual(["fitting", "fitting", "rail", "rail"]);
  expect(corners.map(({ gapMm }) => gapMm).toSorted((a, b) => a - b)).toEqual([0, 0, 6, 6]);
});

it("no stock lock enters a turned fitting: the apertures, 124.5 × 63.5 mm, cross", () => {
  const assessment = assess(scheme);
  expect(factsOf(assessment, "made-connection").map(({ why }) => why)).toEqual(["apertures cross", "apertures cross"]);
  expect(assessment.bearings.some(({ unitId, joint }) => unitId === "t1" && joint === "lock")).toBe(false);
});

it("it hangs 6 mm above the rails on the other side and rocks by that until packed", () => {
  expect(factsOf(assess(scheme), "rocks").map(({ gapMm }) => gapMm)).toEqual([6]);
});

it("the load carries along the rails to the corners: a quarter of 39.24 kN each, by the lever rule on the rail", () => {
  const assessment = assess(scheme);
  const onRail = factsOf(assessment, "borne-on-rail")[0];
  expect(onRail?.turned).toBe(true);
  expect(onRail?.verdict).toBe("not checked");
  for (const { forceKn } of onRail?.crossings ?? []) expect(forceKn).toBeCloseTo(39.24 / 4, 1);
  // The eastern hole is 1219 + 1129.5 = 2348.5 mm from the west end of g1, whose holes are at 102.5 and 5955.5 mm.
  const toDoor = assessment.path.find(({ id }) => id.startsWith("rail:g1:right:t1") && id.endsWith("door-right"));
  const crossing = onRail?.crossings[0]?.forceKn ?? 0;
  expect(toDoor?.forceTopKn).toBeCloseTo((crossing * (2348.5 - 102.5)) / 5853, 2);
});

it("the boxes it does not touch still work as built", () => {
  const assessment = assess(scheme);
  expect(verdictOf(assessment, "g3")).toBe("works as built");
  expect(verdictOf(assessment, "g1")).toBe("not checked");
});

it("moved off the castings, each end of it crosses rail over rail 18.5 mm apart", () => {
  // Half a metre beyond the row's southern face both southern corners are in the air; the seats are where its bottom
  // rails cross the outermost top rail.
  const moved = assess(
    schemeOf({
      units: [...row, { ...turned, x: 3029, y: 2 * 2438 - 500 }],
      pads: row.flatMap((unit) => padsUnder(unit)),
    }),
  );
  expect(bearingOf(moved, "t1:left-rail:g1")).toMatchObject({ on: "rail", gapMm: 18.5, joint: "seat" });
  expect(bearingOf(moved, "t1:front-left")).toMatchObject({ on: "air", joint: "none", forceKn: 0 });
});
