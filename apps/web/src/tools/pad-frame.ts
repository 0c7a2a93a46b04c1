import { cosDegThousandths, sinDegThousandths } from "@cornerway/engine";
import type { PlanFrame } from "@cornerway/engine";
import type { Pad } from "@cornerway/schema";

/** The turned frame of a pad: origin at the middle of its top. */
export const padFrame = ({ xUm, yUm, topZUm, turnMdeg }: Pad): PlanFrame => ({
  xMm: xUm / 1000,
  yMm: yUm / 1000,
  zMm: topZUm / 1000,
  cos: cosDegThousandths(turnMdeg),
  sin: sinDegThousandths(turnMdeg),
  turnMdeg,
});
