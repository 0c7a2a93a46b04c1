import type { Pad } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "../numerics/elementary.ts";
import type { ViewPoint } from "./projection.ts";

/** The four corners of a pad on a plan, mm. */
export function padOutline({ xUm, yUm, lengthUm, widthUm, turnMdeg }: Pad): ViewPoint[] {
  const [cos, sin] = [cosDegThousandths(turnMdeg), sinDegThousandths(turnMdeg)];
  const at = (along: number, across: number): ViewPoint => ({
    uMm: (xUm + (along * lengthUm * cos - across * widthUm * sin) / 2) / 1000,
    vMm: (yUm + (along * lengthUm * sin + across * widthUm * cos) / 2) / 1000,
  });
  return [at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)];
}
