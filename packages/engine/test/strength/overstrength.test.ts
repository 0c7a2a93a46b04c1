import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { factorOf } from "../../src/loads/load-combination.ts";
import { overstrengthBelow } from "../../src/strength/overstrength.ts";
import { schemeActions } from "../../src/strength/scheme-actions.ts";
import { strengthRuns } from "../../src/strength/strength-runs.ts";
import { strength } from "../../src/strength.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis } from "./one-run.ts";
import { ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";

const overhang = ordinarySchemes["an overhang of 1 m"] ?? drawnUnit({});
const stacked = ordinarySchemes["two 40 ft stacked"] ?? drawnUnit({});
/** Where earthquakes are strong enough for every category but A. */
const shaken = (scheme: Scheme): Scheme =>
  inOrder({
    ...scheme,
    basis: { ...scheme.basis, hazards: sampleHazards({ wind: { mph: 105 }, seismic: { ss: 0.4, s1: 0.1 } }) },
  });

function planned(scheme: Scheme) {
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, basis);
  if (!actions.accepted) throw new Error("the sample is accepted");
  return { below: overstrengthBelow(actions, analysis), runs: strengthRuns(actions, basis, analysis).runs, actions };
}

// ASCE 7-16 12.3.3.3 and 12.4.3.1, from memory: what supports a discontinuous wall takes Ω₀ Q_E; Ω₀ of the system's row.
describe("overstrength under an overhang of which the walls do not run down", () => {
  const { below, runs, actions } = planned(shaken(overhang));

  it("acts on the unit below, not on the one whose walls stop", () => {
    expect(below?.owners).toEqual(new Set(["unit-01"]));
    const enlarged = runs.filter(({ combination }) => factorOf(combination, "Emh") !== 0);
    expect(enlarged.length).toBeGreaterThan(0);
    for (const { owners, level } of enlarged) expect([level, owners]).toEqual(["strength", below?.owners]);
  });

  it("takes each level force Ω₀ times", () => {
    const [run] = runs.filter(({ combination }) => factorOf(combination, "Emh") === 1);
    const omega0 = Math.max(
      actions.site?.seismic.axes.x.permit.row.omega0 ?? 0,
      actions.site?.seismic.axes.y.permit.row.omega0 ?? 0,
    );
    expect(omega0).toBeGreaterThanOrEqual(2);
    const [, level] = Object.entries(run?.factors ?? {}).find(([id]) => id.startsWith("E ")) ?? [];
    expect(level).toBe(omega0);
  });

  it("is not asked for where every wall stands on one below, nor in category A", () => {
    expect(planned(shaken(stacked)).below).toBeUndefined();
    const calm = inOrder({
      ...overhang,
      basis: { ...overhang.basis, hazards: sampleHazards({ wind: { mph: 105 }, seismic: { ss: 0.05, s1: 0.02 } }) },
    });
    expect(planned(calm).below).toBeUndefined();
  });

  it("leaves no unit to the engineer by itself, and governs nothing of the upper unit", () => {
    const answer = strength(shaken(overhang));
    if (!answer.accepted) throw new Error("the sample is accepted");
    expect(answer.units.flatMap(({ reasons }) => reasons.map(({ kind }) => kind))).not.toContain("irregular");
    const governed = answer.results.filter(({ governingRun }) => governingRun.includes("Emh"));
    expect(governed.map(({ ownerId }) => ownerId).filter((id) => id !== "unit-01")).toEqual([]);
  });
});
