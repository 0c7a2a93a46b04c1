import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

const lower = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const onto = (x: number, y: number, turn = 0, z = 2591) =>
  assess(schemeOf({ units: [lower, { ...lower, id: "f1", x, y, z, turn }], pads: padsUnder(lower) }));

// Tolerances from memory: lock within 10 mm along and 5 mm across (ISO 668 tolerances on size); full bearing within 38 mm
// along and 25.4 mm across (offsets of the ISO 1496-1 stacking test).
describe("a fitting on a fitting", () => {
  it.each([
    [0, 0, "lock", []],
    [10, 0, "lock", []],
    [0, 5, "lock", []],
    [11, 0, "made connection", ["hole centres apart"]],
    [0, 6, "made connection", ["hole centres apart"]],
    [38, 0, "made connection", ["hole centres apart"]],
    [39, 0, "made connection", ["bears off the corner"]],
    [0, 26, "made connection", ["bears off the corner"]],
  ] as const)("%i mm along and %i mm across takes a %s", (x, y, joint, why) => {
    const assessment = onto(x, y);
    expect(bearingOf(assessment, "f1:front-left")).toMatchObject({ on: "fitting", joint });
    expect(factsOf(assessment, "made-connection").map((fact) => fact.why)).toEqual(why);
  });

  it("takes a lock end for end, and a made connection when it is turned by more than a degree", () => {
    expect(bearingOf(onto(0, 0, 180), "f1:front-left")?.joint).toBe("lock");
    expect(bearingOf(onto(0, 0, 0.9), "f1:front-left")?.on).toBe("fitting");
    expect(factsOf(onto(0, 0, 1.5), "made-connection").map(({ why }) => why)).toEqual(["apertures cross"]);
  });

  it("bears on the rail, 6 mm lower, once it laps the fitting by less than 25 mm", () => {
    // Fittings are 178 mm long: pushed 154 mm they lap by 24.
    expect(bearingOf(onto(154, 0), "f1:front-left")).toMatchObject({ on: "rail", gapMm: 6, joint: "seat" });
    expect(bearingOf(onto(152, 0), "f1:front-left")).toMatchObject({ on: "fitting", gapMm: 0 });
  });

  it("needs packing over a gap of up to 25 mm and finds air beyond", () => {
    expect(bearingOf(onto(0, 0, 0, 2591 + 25), "f1:front-left")).toMatchObject({ on: "fitting", gapMm: 25 });
    expect(bearingOf(onto(0, 0, 0, 2591 + 26), "f1:front-left")).toMatchObject({ on: "air", joint: "none" });
  });

  it("collides when it is set lower than the unit below is high", () => {
    expect(factsOf(onto(0, 0, 0, 2571), "collision").map(({ depthMm }) => depthMm)).toEqual([20]);
  });
});

describe("mixed heights", () => {
  it("leave a unit over an 8 ft 6 in and a 9 ft 6 in one on air at the lower, 2896 − 2591 + 6 = 311 mm above its roof", () => {
    const assessment = assess(
      schemeOf({
        units: [
          { id: "g1", type: "1CCC", x: 0, y: 0 },
          { id: "g2", type: "1CC", x: 6134, y: 0 },
          { id: "f1", type: "1AAA", x: 3067, y: 0, z: 2896 },
        ],
        pads: [
          ...padsUnder({ id: "g1", type: "1CCC", x: 0, y: 0 }),
          ...padsUnder({ id: "g2", type: "1CC", x: 6134, y: 0 }),
        ],
      }),
    );
    expect(bearingOf(assessment, "f1:door-left")).toMatchObject({ on: "air", gapMm: 311 });
    // Its middle, 3067 east of g1's, lies over g1's last fittings at 2926.5: 140.5 mm outside.
    expect(factsOf(assessment, "tips-over")[0]?.outsideMm).toBeCloseTo(140.5, 6);
  });
});

describe("a corner on three", () => {
  it("without a pad under the fourth stays not checked and says which corner", () => {
    const assessment = assess(schemeOf({ units: [{ ...lower, z: 100 }], pads: padsUnder(lower, 100).slice(0, 3) }));
    expect(factsOf(assessment, "corner-on-air")).toMatchObject([
      { fitting: "door-left", over: "air", dropMm: 100, verdict: "not checked" },
    ]);
    expect(assessment.statics.residualKn).toBe(0);
  });
});
