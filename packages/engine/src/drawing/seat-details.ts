import type { Scheme, Seat } from "@cornerway/schema";
import { weldLegMm } from "../cost/weld-length.ts";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import { containerMembers } from "../catalog/sections/container-members.ts";
import type { Detail, DetailPart } from "./detail.ts";
import { bottomRail, bottomRailCut, own, topRailCut } from "./detail-parts.ts";

/** A seat across the rail it lies on, and along it where a stiffener is drawn in the rail that comes down. */
export function seatDetails(scheme: Scheme, seat: Seat): Detail[] {
  const units = new Map(scheme.containers.map((unit) => [unit.id, placeContainer(unit)]));
  const [lower, upper] = [units.get(seat.lowerId), units.get(seat.upperId)];
  if (upper === undefined) return [];
  const packingMm = seat.packingUm / 1000;
  const lowerTop = lower === undefined ? null : lower.topZMm - lower.dimensions.proudOfRoofMm;
  const upperFoot = lowerTop === null ? packingMm : upper.baseZMm - lowerTop;
  const across = acrossIt(seat, lower, bottomRailCut(upper, upperFoot));
  return seat.stiffenerUm === undefined
    ? [across]
    : [across, alongIt(seat, seat.stiffenerUm / 1000, lower, bottomRailCut(upper, upperFoot))];
}

function acrossIt(seat: Seat, lower: PlacedContainer | undefined, rail: readonly DetailPart[]): Detail {
  const [half, packingMm] = [seat.widthUm / 2000, seat.packingUm / 1000];
  return {
    ...{ subject: "seat", tag: seat.tag },
    parts: [
      ...(lower === undefined ? [] : topRailCut(lower, 0)),
      { what: "plate", name: seat.tag, u0Mm: -half, u1Mm: half, z0Mm: 0, z1Mm: packingMm },
      ...rail,
    ],
    welds: seat.heldDown ? [{ uMm: half, zMm: packingMm, legMm: weldLegMm, around: true }] : [],
    heights: packingMm > 0 ? [{ fromMm: 0, toMm: packingMm, atMm: half }] : [],
  };
}

/** How far the rails are shown past the plate, mm. */
const pastMm = 60;

/** Cut along the rails through their middle: their flanges and walls run on, the stiffener stands between the flanges. */
function alongIt(seat: Seat, thickMm: number, lower: PlacedContainer | undefined, rail: readonly DetailPart[]): Detail {
  const [half, packingMm] = [seat.lengthUm / 2000, seat.packingUm / 1000];
  const end = half + pastMm;
  const { thicknessMm } = bottomRail;
  const foot = Math.min(...rail.map(({ z0Mm }) => z0Mm));
  const head = Math.max(...rail.map(({ z1Mm }) => z1Mm));
  const run = (name: string, z0Mm: number, z1Mm: number) => own(name, [{ u0Mm: -end, u1Mm: end, z0Mm, z1Mm }]);
  const wall = containerMembers["top side rail"].wallMm;
  const deep = lower?.dimensions.topRailDepthMm ?? 0;
  const [low, high] = [foot + thicknessMm, head - thicknessMm];
  return {
    ...{ subject: "stiffener at seat", tag: seat.tag },
    parts: [
      ...(lower === undefined ? [] : [...run("top rail", -deep, wall - deep), ...run("top rail", -wall, 0)]),
      { what: "plate", name: seat.tag, u0Mm: -half, u1Mm: half, z0Mm: 0, z1Mm: packingMm },
      ...run("bottom rail", foot, low),
      ...run("bottom rail", high, head),
      { what: "plate", name: `stiffener ${thickMm} mm`, u0Mm: -thickMm / 2, u1Mm: thickMm / 2, z0Mm: low, z1Mm: high },
    ],
    welds: [{ uMm: thickMm / 2, zMm: (low + high) / 2, legMm: weldLegMm, around: false, bothSides: true }],
    heights: [{ fromMm: low, toMm: high, atMm: thickMm / 2 }],
  };
}
