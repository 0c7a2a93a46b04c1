import type { Opening } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { px, type RectPx } from "../px-path.ts";

const teethPx = 4;
const roomPx = 24;

/** A cut made after its unit is placed: a saw's teeth in its upper corner, on a prop where it waits for shoring. */
export function CutStage({ rect, cut }: { rect: RectPx; cut: NonNullable<Opening["cut"]> }) {
  if (rect.widthPx < roomPx || rect.heightPx < roomPx) return null;
  const [x, y] = [rect.xPx + 5, rect.yPx + 7];
  const saw = `M${px(x)} ${px(y)}${`l${teethPx / 2} ${teethPx}l${teethPx / 2} ${-teethPx}`.repeat(3)}`;
  const prop = `M${px(x + 6)} ${px(y + 6)}v8M${px(x + 2)} ${px(y + 14)}h8M${px(x + 2)} ${px(y + 6)}h8`;
  return (
    <path
      className="cut-stage"
      d={cut === "after shoring" ? saw + prop : saw}
      fill="none"
      stroke={ink.graphite}
      strokeWidth={1.1}
    />
  );
}
