import { plainPadBending, plainPadPunching, type PlainPad } from "../codes/concrete/plain-pad.ts";
import { demandAgainst, type Check } from "./check.ts";

/** A pad as plain concrete under a strength-level force in its middle, N: bending and punching. Bars are not counted. */
export const padConcrete = (pad: PlainPad, forceN: number): readonly Check[] => [
  demandAgainst({ element: "pad", limitState: "pad bending" }, forceN, plainPadBending(pad)),
  demandAgainst({ element: "pad", limitState: "pad punching" }, forceN, plainPadPunching(pad)),
];
