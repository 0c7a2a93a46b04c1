import type { Pad } from "@cornerway/schema";
import { known, lineOf, type TakenOff } from "./take-off-line.ts";

/** What the price of a pad holds: 900 × 900 × 450 mm, which the plain stack is taken to stand on. Common practice, no published source. */
const USUAL_M3 = 0.9 * 0.9 * 0.45;

/** A pad that the plain stack has as well costs what it is larger than usual; any other by the piece, and that. */
export function padTakeOff({ id, lengthUm, widthUm, depthUm }: Pad, isPlain: boolean): TakenOff {
  const line = lineOf(id, null, "site");
  const beyondM3 = (lengthUm / 1e6) * (widthUm / 1e6) * (depthUm / 1e6) - USUAL_M3;
  return known([
    ...(isPlain ? [] : [line("pad", 1, "each")]),
    ...(beyondM3 > 0 ? [line("pad concrete", beyondM3, "m³")] : []),
  ]);
}
