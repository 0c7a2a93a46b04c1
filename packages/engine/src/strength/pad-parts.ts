import type { PlacedPad } from "../geometry/building.ts";
import type { GroundValue } from "../checks/soil-bearing.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { forcePart } from "./force-part.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** Under a fitting without a plate, ISO 1161, from memory. */
const FITTING_MM = { along: 178, across: 162 };

/** Ground under a pad at allowable level, the pad itself as plain concrete at strength level. Its own weight is left out. */
export function padParts(
  pads: readonly PlacedPad[],
  bearings: readonly ModelledBearing[],
  onGround: GroundValue,
  concreteMpa: number,
  basis: StrengthBasis,
): StrengthPart[] {
  return pads.flatMap(({ id, pad }) => {
    const own = bearings.filter(({ planned: { below } }) => "ground" in below && below.ground === id);
    const sides = { lengthMm: pad.lengthUm / 1000, widthMm: pad.widthUm / 1000 };
    const ground = (forceN: number) => [basis.allowable.soilBearing({ ...sides, forceN, ground: onGround })];
    const plain = {
      ...sides,
      depthMm: pad.depthUm / 1000,
      plateLengthMm: FITTING_MM.along,
      plateWidthMm: FITTING_MM.across,
      concreteMpa,
    };
    const pressed = (solved: SolvedRun): number =>
      own.reduce((sum, bearing) => sum + Math.max(bearingForce(bearing, solved)[2], 0), 0);
    const named = { ownerId: id, element: "pad" } as const;
    return own.length === 0
      ? []
      : [
          forcePart({ ...named, place: "ground", level: "allowable" }, pressed, ground),
          forcePart({ ...named, place: "concrete", level: "strength" }, pressed, (forceN) =>
            basis.factored.padConcrete(plain, forceN),
          ),
        ];
  });
}
