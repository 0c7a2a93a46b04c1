import type { Operation, Pad, Scheme } from "@cornerway/schema";
import type { PadSize } from "../strength/element-result.ts";

/** The steps of a larger pad's side and of its depth, mm. */
const STEP_MM = 100;
const DEPTH_STEP_MM = 50;

/** The pads of these ids made square with this side, their depth at least a third of it; those as large stay. */
export const enlarged = ({ pads }: Scheme, ids: readonly string[], sideMm: number): Operation[] =>
  pads.flatMap((pad): Operation[] => {
    if (!ids.includes(pad.id)) return [];
    const after = enlargedTo(pad, { sideMm, depthMm: 0 });
    return after.lengthUm === pad.lengthUm && after.widthUm === pad.widthUm ? [] : [{ kind: "pad.change", pad: after }];
  });

/** A pad no smaller than it is and no smaller than this, its depth at least a third of its side: plain concrete bends little so. */
export function enlargedTo(pad: Pad, { sideMm, depthMm }: PadSize): Pad {
  const deepMm = Math.max(depthMm, Math.ceil(sideMm / 3 / DEPTH_STEP_MM) * DEPTH_STEP_MM);
  return {
    ...pad,
    lengthUm: Math.max(pad.lengthUm, sideMm * 1000),
    widthUm: Math.max(pad.widthUm, sideMm * 1000),
    depthUm: Math.max(pad.depthUm, deepMm * 1000),
  };
}

/** The side of a square of `times` the area, rounded up to the step. */
export const sideFor = (lengthMm: number, widthMm: number, times: number): number =>
  Math.ceil(Math.sqrt(lengthMm * widthMm * times) / STEP_MM) * STEP_MM;
