import type { CompassPoint } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "../numerics/elementary.ts";

/** The nearest point of the compass to a direction in the site frame; `northMdeg` turns anticlockwise from site +y. */
export function compassPoint(xMm: number, yMm: number, northMdeg: number): CompassPoint {
  const sin = sinDegThousandths(northMdeg);
  const cos = cosDegThousandths(northMdeg);
  const northward = yMm * cos - xMm * sin;
  const eastward = xMm * cos + yMm * sin;
  if (Math.abs(northward) >= Math.abs(eastward)) return northward >= 0 ? "north" : "south";
  return eastward > 0 ? "east" : "west";
}
