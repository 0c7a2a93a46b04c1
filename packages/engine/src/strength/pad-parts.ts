import type { GroundValue } from "../checks/soil-bearing.ts";
import type { Check } from "../checks/check.ts";
import { padUplift } from "../checks/pad-uplift.ts";
import type { PlacedPad } from "../geometry/building.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { forcePart } from "./force-part.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** Under a fitting without a plate, ISO 1161, from memory. */
const FITTING_MM = { along: 178, across: 162 };

/** A pad as its checks see it, mm. */
export type PadSides = { readonly lengthMm: number; readonly widthMm: number; readonly depthMm: number };

/** What is checked of a pad under one force: ground pressed at allowable level, concrete pressed and weight pulled at strength level. */
export type PadChecks = Readonly<
  Record<"ground" | "concrete" | "its own weight", (forceN: number) => readonly Check[]>
>;

export const padChecks = (
  sides: PadSides,
  ground: GroundValue,
  concreteMpa: number,
  { allowable, factored }: StrengthBasis,
): PadChecks => ({
  ground: (forceN) => [allowable.soilBearing({ lengthMm: sides.lengthMm, widthMm: sides.widthMm, forceN, ground })],
  concrete: (forceN) =>
    factored.padConcrete(
      { ...sides, plateLengthMm: FITTING_MM.along, plateWidthMm: FITTING_MM.across, concreteMpa },
      forceN,
    ),
  "its own weight": (forceN) => [padUplift(forceN, sides.lengthMm * sides.widthMm * sides.depthMm)],
});

/** Ground under a pad, and the pad itself as plain concrete. Its own weight is left out of what presses. */
export function padParts(
  pads: readonly PlacedPad[],
  bearings: readonly ModelledBearing[],
  onGround: GroundValue,
  concreteMpa: number,
  basis: StrengthBasis,
): StrengthPart[] {
  return pads.flatMap(({ id, pad }) => {
    const own = bearings.filter(({ planned: { below } }) => "ground" in below && below.ground === id);
    const checks = padChecks(sidesOf(pad), onGround, concreteMpa, basis);
    const pressed = (solved: SolvedRun): number =>
      own.reduce((sum, bearing) => sum + Math.max(bearingForce(bearing, solved)[2], 0), 0);
    const named = { ownerId: id, element: "pad" } as const;
    return own.length === 0
      ? []
      : [
          forcePart({ ...named, place: "ground", level: "allowable" }, pressed, checks.ground),
          forcePart({ ...named, place: "concrete", level: "strength" }, pressed, checks.concrete),
        ];
  });
}

const sidesOf = ({ lengthUm, widthUm, depthUm }: PlacedPad["pad"]): PadSides => ({
  lengthMm: lengthUm / 1000,
  widthMm: widthUm / 1000,
  depthMm: depthUm / 1000,
});
