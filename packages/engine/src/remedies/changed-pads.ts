import type { Operation, Scheme } from "@cornerway/schema";

/** The steps of a larger pad's side, mm. */
const STEP_MM = 100;

/** The pads of these ids made square with this side, their depth at least a third of it; those as large stay. */
export const enlarged = ({ pads }: Scheme, ids: readonly string[], sideMm: number): Operation[] =>
  pads.flatMap((pad): Operation[] => {
    if (!ids.includes(pad.id)) return [];
    const sideUm = sideMm * 1000;
    const after = {
      ...pad,
      lengthUm: Math.max(pad.lengthUm, sideUm),
      widthUm: Math.max(pad.widthUm, sideUm),
      depthUm: Math.max(pad.depthUm, Math.ceil(sideMm / 3 / DEPTH_STEP_MM) * DEPTH_STEP_MM * 1000),
    };
    return after.lengthUm === pad.lengthUm && after.widthUm === pad.widthUm ? [] : [{ kind: "pad.change", pad: after }];
  });

const DEPTH_STEP_MM = 50;

/** The side of a square of `times` the area, rounded up to the step. */
export const sideFor = (lengthMm: number, widthMm: number, times: number): number =>
  Math.ceil(Math.sqrt(lengthMm * widthMm * times) / STEP_MM) * STEP_MM;
