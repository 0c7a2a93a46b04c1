import type { Opening, Scheme } from "@cornerway/schema";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import { weldLegMm } from "../cost/weld-length.ts";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import type { Detail, DetailPart, DetailWeld } from "./detail.ts";
import { bottomRailCut, boundsOf, cutAcross, outsideMm, own, topRailCut } from "./detail-parts.ts";

/** A side rail farther from the frame of an opening than this is no part of its detail, mm; headers and sills of the ends are not drawn. */
const nearMm = 250;
/** What is shown of a sheet that runs on, mm. */
const sheetMm = 120;

/** Head and sill cut upright, the jamb cut level, of an opening framed in a wall; its edge at 0, outside at the left and below. */
export function openingDetails(scheme: Scheme, opening: Opening): Detail[] {
  const holder = scheme.containers.find(({ id }) => id === opening.containerId);
  if (holder === undefined || opening.face === "roof" || opening.face === "floor") return [];
  const at = { opening, unit: placeContainer(holder), frame: openingFrame(opening) };
  return [headOf(at), jambOf(at), ...sillOf(at)];
}

type Framed = {
  readonly opening: Opening;
  readonly unit: PlacedContainer;
  readonly frame: ReturnType<typeof openingFrame>;
};

function headOf({ opening, unit, frame }: Framed): Detail {
  const { depthMm, widthMm } = outsideMm(frame.header);
  const railOver = unit.dimensions.sheetZone(opening.face).v1 - (opening.sillUm + opening.heightUm) / 1000;
  const near = railOver <= nearMm && !isEnd(opening);
  const sheet = sheetPart(unit, opening, depthMm, near ? railOver : depthMm + sheetMm);
  return {
    ...{ subject: "head of opening", tag: opening.tag },
    parts: [
      ...cutAcross(frame.header, { u0Mm: -widthMm / 2, u1Mm: widthMm / 2, z0Mm: 0, z1Mm: depthMm }),
      ...sheet,
      ...(near ? topRailCut(unit, railOver + unit.dimensions.topRailDepthMm) : []),
    ],
    welds: sheetWeld(sheet, ({ z0Mm }) => z0Mm),
    heights: [{ fromMm: 0, toMm: railOver, atMm: 0 }].filter(({ toMm }) => toMm > 0 && near),
  };
}

function sillOf({ opening, unit, frame }: Framed): Detail[] {
  const { depthMm, widthMm } = outsideMm(frame.sill);
  const { bottomRailDepthMm, baseAboveFittingMm } = unit.dimensions;
  const railUnder = unit.dimensions.sheetZone(opening.face).v0 - opening.sillUm / 1000;
  // Where there is no room for a sill over the bottom rail, the rail is it.
  if (-railUnder < depthMm) return [];
  const near = -railUnder <= nearMm && !isEnd(opening);
  const sheet = sheetPart(unit, opening, near ? railUnder : -depthMm - sheetMm, -depthMm);
  return [
    {
      ...{ subject: "sill of opening", tag: opening.tag },
      parts: [
        ...cutAcross(frame.sill, { u0Mm: -widthMm / 2, u1Mm: widthMm / 2, z0Mm: -depthMm, z1Mm: 0 }),
        ...sheet,
        ...(near ? bottomRailCut(unit, railUnder - bottomRailDepthMm - baseAboveFittingMm) : []),
      ],
      welds: sheetWeld(sheet, ({ z1Mm }) => z1Mm),
      heights: [{ fromMm: railUnder, toMm: 0, atMm: 0 }].filter(({ fromMm }) => fromMm < 0 && near),
    },
  ];
}

/** Looked down on: the jamb with the folded sheet running into it from the left, the opening on the right, outside below. */
function jambOf({ opening, unit, frame }: Framed): Detail {
  const { depthMm, widthMm } = outsideMm(frame.jamb);
  const sheet = foldedSheet(unit, opening, -depthMm);
  return {
    ...{ subject: "jamb of opening", tag: opening.tag },
    parts: [...cutAcross(frame.jamb, { u0Mm: -depthMm, u1Mm: 0, z0Mm: -widthMm / 2, z1Mm: widthMm / 2 }), sheet],
    welds: [{ uMm: -depthMm, zMm: 0, legMm: sheetLegMm(unit, opening), around: false }],
    heights: [{ fromMm: -widthMm / 2, toMm: widthMm / 2, atMm: 0 }],
  };
}

const isEnd = ({ face }: Opening): boolean => face === "front" || face === "door";

const thicknessMm = ({ dimensions }: PlacedContainer, opening: Opening): number =>
  dimensions.sheetThicknessMm[isEnd(opening) ? "end" : "side"];

/** The sheet between a frame and a rail, or as far as it is shown; none where there is no room for any. */
function sheetPart(unit: PlacedContainer, opening: Opening, z0Mm: number, z1Mm: number): DetailPart[] {
  const t = thicknessMm(unit, opening);
  return z1Mm - z0Mm < t ? [] : own(`sheet ${t} mm`, [{ u0Mm: -t / 2, u1Mm: t / 2, z0Mm, z1Mm }]);
}

/** The sheet is welded to the frame from one side; no leg is larger than the sheet is thick (AISC 360 J2.2b, from memory). */
const sheetLegMm = (unit: PlacedContainer, opening: Opening): number => Math.min(weldLegMm, thicknessMm(unit, opening));

const sheetWeld = (sheet: readonly DetailPart[], edge: (part: DetailPart) => number): DetailWeld[] =>
  sheet.map((part) => ({
    ...{ uMm: part.u1Mm, zMm: edge(part), around: false },
    legMm: Math.min(weldLegMm, part.u1Mm - part.u0Mm),
  }));

/** A slope of the sheet with the flats at its ends, its true pitch and depth, a quarter of the pitch to each flat and slope, up to `endMm`. */
function foldedSheet(unit: PlacedContainer, opening: Opening, endMm: number): DetailPart {
  const which = isEnd(opening) ? "end" : "side";
  const t = thicknessMm(unit, opening);
  const quarter = unit.dimensions.corrugationPitchMm[which] / 4;
  const half = unit.dimensions.corrugationDepthMm[which] / 2;
  const at = (quarters: number, zMm: number) => ({ uMm: endMm - quarters * quarter, zMm });
  const line = [at(2.5, half), at(2, half), at(1, -half), at(0, -half)];
  const edge = (side: 1 | -1) => line.map(({ uMm, zMm }) => ({ uMm, zMm: zMm + (side * t) / 2 }));
  const outline = [...edge(1), ...edge(-1).toReversed()];
  const points = outline.map(({ uMm, zMm }) => ({ u0Mm: uMm, u1Mm: uMm, z0Mm: zMm, z1Mm: zMm }));
  return { what: "container steel", name: `sheet ${t} mm`, ...boundsOf(points), outline };
}
