import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { siteActions } from "../../src/loads/site-actions.ts";
import { strengthRuns } from "../../src/strength/strength-runs.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { on, sampleScheme, smallBuildings, usesOf } from "../loads/sample-scheme.ts";
import { basis } from "./one-run.ts";

function runsOf(scheme: Scheme): string[] {
  const supports = [{ elementId: "pad", kind: "pad" as const }];
  const actions = siteActions({ scheme, bearings: new Map(), supports, linesOf: () => [] }, basis.loads);
  if (!actions.accepted) throw new Error("the sample is accepted");
  return strengthRuns(actions, basis, { bearings: [], footings: new Map(), beamSupports: new Map() })
    .runs.filter(({ level }) => level === "strength")
    .map(({ id }) => id);
}
const drawn = (snowPsf: number): Scheme =>
  sampleScheme(smallBuildings["two side by side"], {
    ...on(sampleHazards({ snow: { psf: snowPsf } })),
    uses: usesOf(2, "dwelling"),
  });
// 10 psf on the ground lie as 10 psf on a low roof (I_s·p_g at least), less than 0.88·20 = 17.6 psf of roof live load under the
// same factor; 60 psf lie as 0.7·60 = 42 psf.
const light = runsOf(drawn(10));
const heavy = runsOf(drawn(60));

describe("runs that others stand for", () => {
  it("leaves out snow that is nowhere more than the roof live load in the same sum, and keeps it where it is more", () => {
    const withSnow = (runs: readonly string[]) =>
      runs.filter((id) => id.startsWith("1.2D + 1.6L + 0.5S: ") && id.includes("S uniform"));
    expect(withSnow(light)).toEqual([]);
    expect(withSnow(heavy).length).toBeGreaterThan(0);
  });

  it("keeps snow beside earthquakes, where no roof live load stands in for it", () => {
    expect(light.some((id) => id.startsWith("1.2D + Ev + Eh + L + 0.2S") && id.includes("S uniform"))).toBe(true);
  });

  it("runs wind with all imposed load and with the least dead load alone, and not between", () => {
    const winds = light.filter((id) => id.includes("W1 +x inside pressure"));
    const [full, least] = [
      winds.filter((id) => id.startsWith("1.2D + W")),
      winds.filter((id) => id.startsWith("0.9D")),
    ];
    expect(full.length).toBeGreaterThan(0);
    expect(full.every((id) => id.includes("L everywhere"))).toBe(true);
    expect(least).toHaveLength(1);
  });

  it("moves a pad that settles, and one that stands high, beside the sum in which imposed load leads", () => {
    const moved = light.filter((id) => id.includes("T pad"));
    expect(moved.every((id) => id.startsWith("1.2D + 1.6L"))).toBe(true);
    expect(moved.some((id) => id.includes("T pad settled"))).toBe(true);
    expect(moved.some((id) => id.includes("T pad high"))).toBe(true);
    expect(moved.some((id) => id.includes("T pad low"))).toBe(false);
  });

  it("leans every run of gravity loads without patterns, four ways", () => {
    const leaning = light.filter((id) => / N [+-][xy]$|, N [+-][xy]$/.test(id));
    expect(leaning.some((id) => id.startsWith("1.4D: D most, N +x"))).toBe(true);
    expect(leaning.some((id) => id.includes("L unit"))).toBe(false);
  });
});
