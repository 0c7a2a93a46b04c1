import type { Beam, PointMm, Scheme } from "@cornerway/schema";
import { mmToUm } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";

/** A usual beam to begin from; the engineer chooses the section. Common practice, no published source. */
export const usualBeamSection = "W8x31";
/** Shorter than this it is not yet a beam, mm. */
const leastMm = 200;

/** A beam between two points of its upper face; null while they are too near each other in plan. */
export function newBeam(scheme: Scheme, from: PointMm, to: PointMm): Beam | null {
  if (Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) < leastMm) return null;
  return {
    id: newElementId("m"),
    tag: nextTag(scheme, "BM"),
    from: spotUm(from),
    to: spotUm(to),
    section: usualBeamSection,
  };
}

const spotUm = ({ xMm, yMm, zMm }: PointMm) => ({ xUm: mmToUm(xMm), yUm: mmToUm(yMm), zUm: mmToUm(zMm) });
