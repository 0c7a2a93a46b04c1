import type { ActionCase } from "../../../src/loads/action-case.ts";
import { usualAssumptions } from "../../../src/model/model-assumptions.ts";
import { strength } from "../../../src/strength.ts";
import { drawnUnit } from "../drawn-unit.ts";
import { firstSet, lineForces, oneRun, ownWeight } from "../one-run.ts";
import { onPadsByHand, ordinarySchemes } from "../ordinary-schemes/ordinary-schemes.ts";

/**
 * What the worse side wall of a 40 ft unit with doors left as doors takes in the wind across it, allowable level, the roof as stiff
 * as the envelope has it, N.
 */
export function sideWallInTwistN(): number {
  const answer = strength(onPadsByHand(ordinarySchemes["one 40 ft"] ?? drawnUnit({})));
  const wall = answer.accepted
    ? answer.results.find(({ limitState, place }) => limitState === "wall shear by the code" && place === "left wall")
    : undefined;
  return wall?.working?.symbols.find(({ symbol }) => symbol === "V")?.value ?? Number.NaN;
}

/** What a pad under its door end that settles by 10 mm bends the door sill of a 40 ft unit by, floor and roof as good as stiff, N·mm. */
export function sillWherePadSettlesNmm(): number {
  const scheme = onPadsByHand(ordinarySchemes["one 40 ft"] ?? drawnUnit({}));
  const pad = scheme.pads.find(({ xUm }) => xUm > 0);
  if (pad === undefined) throw new Error("it stands on pads");
  const settled: ActionCase = {
    id: "settled",
    symbol: "T",
    loads: [{ kind: "movement", elementId: pad.id, downMm: 10 }],
  };
  const { floorShear, roofShear } = usualAssumptions;
  const stiff = { ...usualAssumptions, floorShear: 1000 * floorShear, roofShear: 1000 * roofShear };
  const [without, moved] = [[], [settled]].map((more) => {
    // heavy enough that no corner leaves its pad
    const { solved, set } = oneRun(scheme, [ownWeight(scheme, 400_000), ...more], {
      set: { ...firstSet(), assumptions: stiff },
    });
    const sill = lineForces(solved, set, "unit-01").find(([id]) => id.startsWith("doorEndbottomRail"));
    return sill?.[1][4] ?? Number.NaN;
  });
  return Math.abs((moved ?? Number.NaN) - (without ?? Number.NaN));
}
