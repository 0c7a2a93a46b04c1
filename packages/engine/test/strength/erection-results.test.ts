import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { erectionResults } from "../../src/strength/erection-results.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { idOf, on, sampleScheme } from "../loads/sample-scheme.ts";
import { basis } from "./one-run.ts";
import { ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";

const row = (mph: number): Scheme =>
  inOrder(
    sampleScheme(
      [-2, -1, 0, 1, 2].map((at) => ({ type: "1AAA" as const, xMm: 0, yMm: at * 2438, zMm: 0 })),
      on(sampleHazards({ wind: { mph } })),
    ),
  );
const results = (scheme: Scheme) => erectionResults(scheme, analyse(scheme), basis);

describe("a row of five bare 40 ft units set one after the other", () => {
  const found = results(row(230));

  it("is judged unit by unit as each has just been set", () => {
    expect(found.map(({ ownerId }) => ownerId)).toEqual([1, 2, 3, 4, 5].map(idOf));
    expect(found[2]?.governingRun).toMatch(/^stage 3 of 5, /);
  });

  // q grows with V²: a unit that turns over has all its demand from the wind, whose least value is passed at both speeds.
  it("is turned four times as hard in twice the wind", () => {
    const [first, slow] = [results(row(460))[0], found[0]];
    expect([first?.place, slow?.place]).toEqual([first?.place, first?.place]);
    if (first?.place !== "just set, turns over") throw new Error(`it ${first?.place}`);
    expect((first.utilisation ?? 0) / (slow?.utilisation ?? 1)).toBeCloseTo(4, 6);
  });

  it("leaves what goes over to the engineer: props of the erector would hold it", () => {
    expect(found[0]?.utilisation).toBeGreaterThan(1);
    expect(found[0]?.covered).toBe("bounded");
  });
});

describe("a unit that nothing holds against sliding", () => {
  it("is said to slide, though friction of nothing gives no utilisation, and not merely how far it is from turning over", () => {
    const scheme = row(40);
    const [smooth] = results({ ...scheme, basis: { ...scheme.basis, friction: 0 } });
    expect([smooth?.place, smooth?.refused, smooth?.utilisation]).toEqual([
      "just set, slides",
      "nothing resists it",
      undefined,
    ]);
  });
});

describe("units with connections drawn", () => {
  it("are held from the start", () => {
    const held = ordinarySchemes["two 40 ft stacked"];
    if (held === undefined) throw new Error("the sample is there");
    expect(results(inOrder(held))).toEqual([]);
  });

  it("and nothing is said where the place has no wind yet", () => {
    const scheme = row(115);
    expect(results({ ...scheme, basis: { ...scheme.basis, hazards: null } })).toEqual([]);
  });
});
