import {
  flangeBending,
  webBuckling,
  webCrippling,
  webYielding,
  type FlangeForce,
} from "../codes/steel/concentrated-force.ts";
import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import { demandAgainst, type Check } from "./check.ts";

/** A force on an added beam's flange: pressing (N > 0) or pulling, and whether an equal one presses the other flange. */
export type BeamForce = FlangeForce & { readonly forceN: number; readonly bothFlanges: boolean };

/** The web, or for a pull the flange and the web, of an I beam without stiffeners under a force at one place (J10). */
export function forceOnBeam(force: BeamForce, basis: SteelBasis): readonly Check[] {
  const subject = (limitState: "web yielding" | "web crippling" | "web buckling" | "flange bending") =>
    ({ element: "added beam", limitState }) as const;
  const yielding = demandAgainst(subject("web yielding"), force.forceN, webYielding(force, basis));
  if (force.forceN < 0)
    return [demandAgainst(subject("flange bending"), force.forceN, flangeBending(force, basis)), yielding];
  const crippling = demandAgainst(subject("web crippling"), force.forceN, webCrippling(force, basis));
  if (!force.bothFlanges) return [yielding, crippling];
  return [yielding, crippling, demandAgainst(subject("web buckling"), force.forceN, webBuckling(force, basis))];
}
