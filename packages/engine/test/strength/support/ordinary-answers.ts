import { strength } from "../../../src/strength.ts";
import { drawnUnit } from "../drawn-unit.ts";
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
