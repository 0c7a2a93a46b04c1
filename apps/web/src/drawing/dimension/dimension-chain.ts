import type { UnitSystem } from "@cornerway/schema";
import { drawnLength, drawnStepMm } from "../../units/drawn-length.ts";

export type DimensionSegment = { fromMm: number; toMm: number; text: string };

/**
 * Dimensions between rising places. Places are rounded to the step they are written in before they are taken from each
 * other, so that a string of dimensions always adds up to the overall one written under it.
 */
export function dimensionChain(placesMm: readonly number[], units: UnitSystem): DimensionSegment[] {
  const stepMm = drawnStepMm(units);
  const stepped = (atMm: number) => Math.round(atMm / stepMm);
  return placesMm.slice(1).map((toMm, index) => {
    const fromMm = placesMm[index] ?? toMm;
    return { fromMm, toMm, text: drawnLength((stepped(toMm) - stepped(fromMm)) * stepMm, units) };
  });
}
