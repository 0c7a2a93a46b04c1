import { assess, tiePlaces } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { factsOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// Two 20 ft units 8 ft 6 high (2591), 50 mm apart: walls at 1219 and 1269. Top rail 60 deep under 2585, bottom rail 158 above
// 12.5, fittings 118 high and 178 long (generic specification; ISO 1161 from memory), corner posts 160 seen from the side.
const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const g2 = { ...g1, id: "g2", y: 2438 + 50 } as const;
const pads = [...padsUnder(g1), ...padsUnder(g2)].map((pad) => ({ ...pad, width: 170 }));
const tie = { id: "t1", a: "g1", b: "g2", at: [0, 1244, 2555] } as const;
const marked = (at: readonly [number, number, number], more: Partial<Parameters<typeof schemeOf>[0]> = {}) =>
  assess(schemeOf({ units: [g1, g2], pads, ties: [{ ...tie, at }], ...more }));
const refusals = (assessment: ReturnType<typeof assess>) =>
  factsOf(assessment, "tie-cannot-serve").map(({ why, verdict }) => [why, verdict]);

describe("a tie", () => {
  it("bridges the gap between the walls and says what it meets on either side", () => {
    const meets = (at: readonly [number, number, number]) =>
      factsOf(marked(at), "tie-joins").flatMap((fact) => [fact.gapMm, ...fact.meets]);
    expect(meets([0, 1244, 2555])).toEqual([50, "top rail", "top rail"]);
    expect(meets([0, 1244, 100])).toEqual([50, "bottom rail", "bottom rail"]);
    expect(meets([-2950, 1244, 1200])).toEqual([50, "corner post", "corner post"]);
    expect(meets([2926.5, 1244, 2540])).toEqual([50, "corner fitting", "corner fitting"]);
  });

  it("meets what each unit has there: the fitting of one, the rail of the other", () => {
    const assessment = marked([2926.5, 1244, 2540], { units: [g1, { ...g2, x: 1000 }], pads: [] });
    expect(factsOf(assessment, "tie-joins")[0]?.meets).toEqual(["corner fitting", "top rail"]);
  });

  it("carries upright load that statics does not find: it says so and changes no reaction", () => {
    const upright = assess(schemeOf({ units: [g1, g2], pads, ties: [{ ...tie, upright: true }] }));
    expect(factsOf(upright, "tie-joins").map((fact) => fact.upright)).toEqual([true]);
    expect(upright.statics).toEqual(marked(tie.at).statics);
  });

  it("does not serve on sheet alone, which takes no pull: not checked", () => {
    expect(refusals(marked([0, 1244, 1200]))).toEqual([["on sheet", "not checked"]]);
  });

  it("does not work in an opening of either unit", () => {
    const cuts = [{ id: "d1", in: "g2", face: "right", at: 2500, sill: 500, width: 1000, height: 1500 } as const];
    expect(refusals(marked([0, 1244, 1200], { cuts }))).toEqual([["in an opening", "does not work"]]);
  });

  it("does not work out of reach, 150 mm from either wall", () => {
    const apart = { ...g2, y: 2438 + 400 };
    const assessment = marked([0, 1219 + 200, 2555], { units: [g1, apart], pads: [] });
    expect(refusals(assessment)).toEqual([["out of reach", "does not work"]]);
    expect(factsOf(assessment, "tie-cannot-serve")[0]?.awayMm).toBeCloseTo(200, 6);
    const within = marked([0, 1219 + 150, 2555], { units: [g1, { ...g2, y: 2438 + 300 }], pads: [] });
    expect(factsOf(within, "tie-joins")[0]?.gapMm).toBeCloseTo(300, 6);
  });

  it("does not work between units above each other, or crossing", () => {
    const above = { ...g1, id: "g2", z: 2591 };
    expect(refusals(marked([0, 1219, 2591], { units: [g1, above] }))).toEqual([["not side by side", "does not work"]]);
    const across = { ...g1, id: "g2", z: 2591, turn: 90 };
    expect(refusals(marked([0, 0, 2591], { units: [g1, across] }))).toEqual([["not side by side", "does not work"]]);
  });

  it("is placed for the drawing with the same gap", () => {
    expect(tiePlaces(schemeOf({ units: [g1, g2], ties: [tie] }))[0]).toMatchObject({ gapMm: 50, awayMm: 25 });
  });
});
