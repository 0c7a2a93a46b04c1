import { expect, it } from "vitest";
import { condense } from "../../src/analysis/condense.ts";
import { unitElements } from "../../src/analysis/unit-elements.ts";
import { condensationCache } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { bearingPlan } from "../../src/model/bearing-plan.ts";
import { usualAssumptions, type ModelAssumptions } from "../../src/model/model-assumptions.ts";
import { unitFragment, withSheets } from "../../src/model/unit-fragment.ts";
import { unitLinesOf } from "../../src/model/unit-lines-of.ts";
import type { UnitLines } from "../../src/model/unit-lines.ts";
import { assumptionSets } from "../../src/strength/assumption-sets.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const scheme = drawnUnit({
  type: "1CC",
  openings: [{ face: "left", use: "window", framed: true, fromMm: 1500, widthMm: 1500 }],
});

function linesUnder(assumptions: ModelAssumptions): UnitLines {
  const analysis = analyse(scheme);
  const [unit] = analysis.structure.building.units;
  if (unit === undefined) throw new Error("there is a container");
  return unitLinesOf(analysis.structure, bearingPlan(analysis), unit, assumptions);
}

function stiffnessOf(condensation: ReturnType<typeof condense>): Float64Array {
  if (!condensation.stable) throw new Error("the container stands");
  return condensation.condensed.stiffness;
}

const usual = unitFragment({ ...linesUnder(usualAssumptions), doors: usualAssumptions.frontSheet }, "usual");

const others = assumptionSets.filter(({ solves, pads }) => solves === "governing runs" && pads === undefined);

it.each(others.map(({ id, assumptions }) => [id, assumptions] as const))(
  "a container with other sheets is the one drawn, made and condensed with them from nothing: %s",
  (_, assumptions) => {
    const doors = { ...usualAssumptions.frontSheet, shear: 7 };
    const lines = { ...linesUnder(assumptions), doors };
    const drawn = unitFragment(lines, "other").fragment;
    const taken = withSheets(usual, lines, "other").fragment;
    expect(taken).toEqual(drawn);
    const before = { fragment: usual.fragment, made: unitElements(usual.fragment) };
    const anew = unitElements(drawn);
    expect(unitElements(taken, undefined, before)).toEqual(anew);
    const cache = condensationCache(1e8);
    const stiffnesses = [usual.fragment, taken].map((fragment) => stiffnessOf(cache.part(fragment)));
    expect(stiffnesses[1]).toEqual(stiffnessOf(condense(anew)));
  },
);
