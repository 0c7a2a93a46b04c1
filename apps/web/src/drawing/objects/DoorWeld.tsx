import { ink } from "../../look/ink.ts";
import { linePath } from "../px-path.ts";

const stepPx = 7;

/** A weld along an upright line: short slanting strokes in the colour of added steel. */
export function DoorWeld({ xPx, topPx, footPx }: { xPx: number; topPx: number; footPx: number }) {
  const count = Math.max(2, Math.floor((footPx - topPx) / stepPx));
  const strokes = Array.from({ length: count }, (_, at) => {
    const y = topPx + ((at + 0.5) * (footPx - topPx)) / count;
    return linePath(xPx - 2.5, y + 2.5, xPx + 2.5, y - 2.5);
  });
  return <path className="door-weld" d={strokes.join("")} stroke={ink.prussian} strokeWidth={1.1} />;
}
