import type { Lock, Scheme } from "@cornerway/schema";
import { weldLegMm } from "../cost/weld-length.ts";
import { placeContainer, type PlacedContainer, type PlacedFitting } from "../geometry/place.ts";
import type { Detail, DetailPart, DetailWeld } from "./detail.ts";
import { fittingPart, isWithin, topRailCut } from "./detail-parts.ts";
import { padDetail, padUnder } from "./pad-detail.ts";

/** What stands on a unit is within this of its top, and what stands on a fitting within this of it in plan, mm. */
const seatedMm = 30;

/** What joins a bottom fitting to what it stands on: the fittings with a stock lock between, plates of the stated detail, anchors. */
export function jointDetails(scheme: Scheme, lock: Lock): Detail[] {
  const units = scheme.containers.map(placeContainer);
  const unit = units.find(({ id }) => id === lock.containerId);
  const fitting = unit?.bottomFittings.find(({ name }) => name === lock.fitting);
  if (unit === undefined || fitting === undefined) return [];
  const pad = padUnder(scheme.pads, unit, fitting);
  if (pad !== undefined && lock.kind !== "lock")
    return padDetail(scheme, pad).map((detail) => ({ ...detail, subject: lock.kind, tag: lock.tag }));
  const under = partsUnder(units, unit, fitting);
  if (under === null) return [];
  const over = fittingPart(unit, 0);
  const heights = [{ fromMm: 0, toMm: over.z1Mm, atMm: over.u1Mm }];
  if (lock.kind === "lock")
    return [{ subject: "lock", tag: lock.tag, parts: [...under, over, device], welds: [], heights }];
  const { parts, welds } = statedPlates(over);
  return [{ subject: lock.kind, tag: lock.tag, parts: [...under, over, ...parts], welds, heights }];
}

/** The fitting right under another, else the rail it comes down on; null where nothing is there. */
function partsUnder(
  units: readonly PlacedContainer[],
  unit: PlacedContainer,
  { at }: PlacedFitting,
): DetailPart[] | null {
  const beneath = units.filter(({ id, topZMm }) => id !== unit.id && Math.abs(topZMm - unit.baseZMm) < seatedMm);
  const isThere = (top: PlacedFitting): boolean =>
    Math.abs(top.at.xMm - at.xMm) < seatedMm && Math.abs(top.at.yMm - at.yMm) < seatedMm;
  const fitted = beneath.find(({ topFittings }) => topFittings.some(isThere));
  if (fitted !== undefined) return [fittingPart(fitted, -fitted.dimensions.fitting.heightMm)];
  const lower = beneath.find((each) => isWithin(each, at, 0));
  return lower === undefined ? null : topRailCut(lower, -lower.dimensions.proudOfRoofMm);
}

/** The room of a stock lock in the apertures of two fittings, 124 mm long (ISO 1161, from memory); its shape is its maker's. */
const device: DetailPart = {
  ...{ what: "device", name: "stock lock, its maker's shape" },
  ...{ u0Mm: -62, u1Mm: 62, z0Mm: -50, z1Mm: 50 },
};

/** The detail made connections are checked with: two plates of 10 mm, 200 mm of fillet each; common practice, no published source. */
const stated = { thickMm: 10, halfHighMm: 75, weldMm: 200 } as const;

function statedPlates({ u0Mm, u1Mm }: DetailPart): { parts: DetailPart[]; welds: DetailWeld[] } {
  const { thickMm, halfHighMm, weldMm } = stated;
  const plate = (from: number): DetailPart => ({
    ...{ what: "plate", name: `2 stated plates ${thickMm} mm`, u0Mm: from, u1Mm: from + thickMm },
    ...{ z0Mm: -halfHighMm, z1Mm: halfHighMm },
  });
  const weld = { uMm: u1Mm + thickMm, legMm: weldLegMm, around: false, lengthMm: weldMm } as const;
  return { parts: [plate(u0Mm - thickMm), plate(u1Mm)], welds: [{ ...weld, zMm: halfHighMm }] };
}
