import type { Opening } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { px, type RectPx } from "../px-path.ts";

const teethPx = 4;
const propPx = 10;
const roomPx = 32;

/**
 * A cut made after its unit is placed: a saw's teeth in its lower corner, clear of the name of the unit, on a prop where
 * it waits for shoring.
 */
export function CutStage({ rect, cut }: { rect: RectPx; cut: NonNullable<Opening["cut"]> }) {
  if (rect.widthPx < roomPx || rect.heightPx < roomPx) return null;
  const highPx = teethPx + (cut === "after shoring" ? propPx : 0);
  const [x, y] = [rect.xPx + 6, rect.yPx + rect.heightPx - 7 - highPx];
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
