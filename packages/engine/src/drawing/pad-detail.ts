import type { Pad, Scheme } from "@cornerway/schema";
import { anchorDepthMm, statedAnchors } from "../catalog/stated-anchors.ts";
import { weldLegMm } from "../cost/weld-length.ts";
import { placeContainer, type PlacedContainer, type PlacedFitting } from "../geometry/place.ts";
import type { Detail, DetailPart } from "./detail.ts";
import { fittingPart } from "./detail-parts.ts";

/** A pad with the fitting that stands on it; where a hold-down is drawn there, its stated plate and anchors. None for a bare pad. */
export function padDetail(scheme: Scheme, pad: Pad): Detail[] {
  const stood = scheme.containers
    .map(placeContainer)
    .flatMap((unit) => unit.bottomFittings.map((fitting) => ({ unit, fitting })))
    .find(({ unit, fitting }) => padUnder([pad], unit, fitting) !== undefined);
  if (stood === undefined) return [];
  const { unit, fitting } = stood;
  const held = scheme.locks.some(
    (lock) => lock.kind === "hold-down" && lock.containerId === unit.id && lock.fitting === fitting.name,
  );
  const [half, deep] = [pad.lengthUm / 2000, pad.depthUm / 1000];
  const concrete: DetailPart = { what: "concrete", name: pad.tag, u0Mm: -half, u1Mm: half, z0Mm: -deep, z1Mm: 0 };
  const corner = fittingPart(unit, 0);
  return [
    {
      ...{ subject: "pad", tag: pad.tag },
      parts: [concrete, ...(held ? anchorsIn(deep) : []), corner],
      welds: held ? [{ uMm: corner.u1Mm, zMm: 0, legMm: weldLegMm, around: true }] : [],
      heights: [{ fromMm: -deep, toMm: 0, atMm: half }],
    },
  ];
}

/** What stands on a pad is within this of its top: its packing, mm. */
const SEATED_MM = 30;

/** The pad a bottom fitting stands on. */
export const padUnder = (pads: readonly Pad[], { baseZMm }: PlacedContainer, { at }: PlacedFitting): Pad | undefined =>
  pads.find((pad) => isOn(pad, at.xMm, at.yMm) && Math.abs(baseZMm - pad.topZUm / 1000) < SEATED_MM);

const isOn = ({ xUm, yUm, lengthUm, widthUm }: Pad, xMm: number, yMm: number): boolean =>
  Math.abs(xMm - xUm / 1000) * 2 <= lengthUm / 1000 && Math.abs(yMm - yUm / 1000) * 2 <= widthUm / 1000;

/** The two nearest to the cut, from over the pad down into the concrete. */
function anchorsIn(padDepthMm: number): DetailPart[] {
  const { count, diameterMm, spacingMm } = statedAnchors;
  return [-spacingMm / 2, spacingMm / 2].map((u) => ({
    ...{ what: "anchor", name: `${count} stated anchors ${diameterMm} mm` },
    ...{ u0Mm: u - diameterMm / 2, u1Mm: u + diameterMm / 2, z0Mm: -anchorDepthMm(padDepthMm), z1Mm: diameterMm },
  }));
}
