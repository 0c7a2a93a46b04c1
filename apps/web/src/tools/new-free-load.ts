import { containerDimensions } from "@cornerway/engine";
import type { Container, FreeLoad, Scheme } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";

/** A load in the middle of a unit, to begin from: of one kilonewton, one a metre, one a square metre. */
export function newFreeLoad(scheme: Scheme, unit: Container, shape: FreeLoad["shape"]): FreeLoad {
  const { lengthMm, widthMm } = containerDimensions(unit.type);
  const common = {
    id: newElementId("q"),
    tag: nextTag(scheme, "Q"),
    containerId: unit.id,
    surface: "floor",
    case: "imposed",
    note: "Load",
  } as const;
  const at = { xUm: Math.round(lengthMm * 500), yUm: Math.round(widthMm * 500) };
  switch (shape) {
    case "point":
      return { ...common, shape, ...at, downN: 1000, alongXN: 0, alongYN: 0 };
    case "line":
      return {
        ...common,
        shape,
        xUm: at.xUm - 500_000,
        yUm: at.yUm,
        toXUm: at.xUm + 500_000,
        toYUm: at.yUm,
        downNPerM: 1000,
      };
    case "area":
      return {
        ...common,
        shape,
        xUm: at.xUm - 500_000,
        yUm: at.yUm - 500_000,
        lengthUm: 1_000_000,
        widthUm: 1_000_000,
        pressurePa: 1000,
      };
  }
}
