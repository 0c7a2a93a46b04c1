import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import {
  branchOnTube,
  sideWallCrippling,
  sideWallYielding,
  type Chord,
  type SideWallForce,
} from "../codes/steel/tube-wall.ts";
import { demandAgainst, type Check, type Subject } from "./check.ts";

/** A force on the face of a tube that is a beam, N, pressing positive. */
export type TubeForce = SideWallForce & { readonly forceN: number };

/** Across the whole width both side walls yield and cripple; what is `narrow` plastifies the face between them. */
export function forceOnTubeBeam(chord: Chord, force: TubeForce, narrow: boolean, basis: SteelBasis): readonly Check[] {
  const subject = (limitState: Subject["limitState"]): Subject => ({ element: "added beam", limitState });
  if (narrow) {
    const branch = { widthMm: force.bearingMm, alongChordMm: force.bearingMm };
    return [demandAgainst(subject("wall plastification"), force.forceN, branchOnTube(chord, branch, basis))];
  }
  const yielding = demandAgainst(subject("side wall yielding"), force.forceN, sideWallYielding(chord, force, basis));
  if (force.forceN < 0) return [yielding];
  return [
    yielding,
    demandAgainst(subject("side wall crippling"), force.forceN, sideWallCrippling(chord, force, basis)),
  ];
}
