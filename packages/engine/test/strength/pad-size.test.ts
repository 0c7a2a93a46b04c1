import { describe, expect, it } from "vitest";
import type { Pad } from "@cornerway/schema";
import { padChecks } from "../../src/strength/pad-parts.ts";
import { withPadSizes } from "../../src/strength/pad-size.ts";
import type { ElementResult } from "../../src/strength/element-result.ts";
import { ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";
import { strength } from "../../src/strength.ts";
import { basis } from "./one-run.ts";

const pad = (id: string, xMm: number): Pad => ({
  ...{ id, tag: "P", xUm: xMm * 1000, yUm: 0, topZUm: 0, turnMdeg: 0 },
  ...{ lengthUm: 600_000, widthUm: 600_000, depthUm: 500_000 },
});
const result = (place: string, forceN: number, utilisation: number): ElementResult => ({
  ...{ id: `p ${place}`, ownerId: "p", element: "pad", place, limitState: "bearing on soil", forceN, utilisation },
  ...{ governingRun: "", assumptions: "locks at play", held: [], envelope: {}, covered: "checked" },
});
const clay = { kind: "report", bearingKpa: 71.8, source: "sample" } as const;
const checks = ({ sideMm, depthMm }: { readonly sideMm: number; readonly depthMm: number }) =>
  padChecks({ lengthMm: sideMm, widthMm: sideMm, depthMm }, clay, 17.2, basis);

describe("a pad that is too small", () => {
  // 100 kN on 71.8 kPa: 1.393 m², 1.18 m square, drawn as 1.2 m.
  it("names the least square its ground bears", () => {
    const [sized] = withPadSizes([result("ground", 100_000, 3.9)], [pad("p", 0)], checks);
    expect(sized?.wouldDo).toEqual({ sideMm: 1200, depthMm: 500 });
  });

  /**
   * 20 kN of pull on 0.9 · 23.5 kN/m³: 0.946 m³. Of 1.2 m it takes 0.66 m, drawn 0.7: 1.008 m³; of 1.3 m 0.56, 0.6: 1.014 m³;
   * of 1.4 m 0.48, 0.5: 0.980 m³, the least; of 1.5 m no less than 0.5: 1.125 m³.
   */
  it("is of the least concrete that holds both what presses and what pulls", () => {
    const both = [result("ground", 100_000, 3.9), result("its own weight", 20_000, 5.3)];
    for (const sized of withPadSizes(both, [pad("p", 0)], checks))
      expect(sized.wouldDo).toEqual({ sideMm: 1400, depthMm: 500 });
  });

  it("names none where the next pad is nearer than that: a strip is asked for", () => {
    const [sized] = withPadSizes([result("ground", 100_000, 3.9)], [pad("p", 0), pad("q", 1100)], checks);
    expect(sized?.wouldDo).toBeUndefined();
  });

  it("and one that is large enough names none", () => {
    const [sized] = withPadSizes([result("ground", 10_000, 0.39)], [pad("p", 0)], checks);
    expect(sized?.wouldDo).toBeUndefined();
  });

  it("does once it is drawn: the pads of a 40 ft unit in the wind no longer lift", () => {
    const drawn = ordinarySchemes["one 40 ft"];
    if (drawn === undefined) throw new Error("the sample is there");
    const lifts = (scheme: typeof drawn) => {
      const answer = strength(scheme);
      if (!answer.accepted) throw new Error("the sample is accepted");
      return answer.results.filter(({ limitState, utilisation = 0 }) => limitState === "pad lifts" && utilisation > 1);
    };
    const sizes = lifts(drawn).flatMap(({ wouldDo }) => (wouldDo === undefined ? [] : [wouldDo]));
    const [size] = sizes.toSorted((a, b) => b.sideMm ** 2 * b.depthMm - a.sideMm ** 2 * a.depthMm);
    if (size === undefined) throw new Error("a pad of the sample lifts");
    const pads = drawn.pads.map((one) => ({
      ...one,
      ...{ lengthUm: size.sideMm * 1000, widthUm: size.sideMm * 1000, depthUm: size.depthMm * 1000 },
    }));
    expect(lifts({ ...drawn, pads })).toEqual([]);
  });
});
