import type { Opening } from "@cornerway/schema";
import { steelDensity } from "../catalog/materials.ts";
import type { ContainerDimensions } from "../catalog/container-dimensions.ts";

/**
 * Mass of the sheet an opening takes out, kg. Doors of the door end and floor boards are not sheet: nothing is taken
 * off for them.
 */
export function sheetMassKg({ sheetThicknessMm }: ContainerDimensions, { face, widthUm, heightUm }: Opening): number {
  const areaM2 = (widthUm / 1e6) * (heightUm / 1e6);
  switch (face) {
    case "left":
    case "right":
      return areaM2 * (sheetThicknessMm.side / 1000) * steelKgPerM3 * developed.side;
    case "front":
      return areaM2 * (sheetThicknessMm.end / 1000) * steelKgPerM3 * developed.end;
    case "roof":
      return areaM2 * (sheetThicknessMm.roof / 1000) * steelKgPerM3 * developed.roof;
    case "door":
    case "floor":
      return 0;
  }
}

const steelKgPerM3 = steelDensity.valueKgPerM3;

/**
 * Length of sheet per length of wall, from the corrugations of generic specifications: Σ flats and slopes over the
 * pitch.
 */
const developed = { side: 1.0643, end: 1.2482, roof: 1.1017 };
