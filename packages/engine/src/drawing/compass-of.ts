import type { PointMm } from "@cornerway/schema";
import type { Side } from "./side.ts";

/** The side of the building a face looks to, by the greater part of its outward normal. */
export function compassOf(normal: Pick<PointMm, "xMm" | "yMm">): Side {
  if (Math.abs(normal.yMm) >= Math.abs(normal.xMm)) return normal.yMm < 0 ? "south" : "north";
  return normal.xMm > 0 ? "east" : "west";
}
