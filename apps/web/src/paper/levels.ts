import { storeysOf } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { LevelMark } from "../sheet/contract.ts";
import { extentOf } from "./lay-views.ts";
import type { LaidViews } from "./lay-views.ts";

/** The levels of the building at the true height of the elevation beside them, roof on top. */
export function levelsOf(scheme: Scheme, views: LaidViews): LevelMark[] {
  const { originYPx, pxPerM } = views.elevation.transform;
  const yPx = (zMm: number) => originYPx - (zMm * pxPerM) / 1000;
  const storeys = storeysOf(scheme);
  const ground = scheme.site.groundZUm / 1000;
  if (storeys.length === 0) return [{ storey: 0, name: "Ground", zMm: ground, yPx: yPx(ground) }];
  const roof = extentOf(scheme, "south").vHigh;
  return [
    ...storeys.map(({ index, name, levelMm }) => ({ storey: index, name, zMm: levelMm, yPx: yPx(levelMm) })),
    { storey: null, name: "Roof", zMm: roof, yPx: yPx(roof) },
  ];
}
