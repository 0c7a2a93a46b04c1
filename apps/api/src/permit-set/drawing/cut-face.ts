import { foldLines, type PaperRect, type PlacedContainer } from "@cornerway/engine";
import type { Face, Opening, UnitSystem } from "@cornerway/schema";
import type { Ink } from "../paper/ink.ts";
import { box, boxD, path, type Box } from "../paper/shapes.ts";
import type { View } from "../paper/view.ts";
import { alongString, uprightString } from "./dimensions.ts";
import { diagonals } from "./hatch.ts";
import { openingInk } from "./opening.ts";
import { hexTag } from "./signs.ts";

/** One face of a container laid flat, seen from outside, measured from its first corner fitting. */
export type CutFace = { placed: PlacedContainer; face: Face; openings: readonly Opening[] };

/** A face seen from outside runs to the left where its own measure runs to the right seen from inside. */
const mirrored: Readonly<Record<Face, boolean>> = {
  left: true,
  front: true,
  right: false,
  door: false,
  roof: false,
  floor: false,
};

/** Where a length along the face lies on the paper of the face, mm: 0 at the fitting its openings are measured from. */
export const alongFace = ({ placed, face }: CutFace, mm: number): number =>
  mirrored[face] ? placed.dimensions.face(face).u1 - mm : mm;

/** Face, folds, keep zones, openings, and dimensions from the fitting along and from the underside of the fitting up. */
export function cutFaceInk(cut: CutFace, view: View, units: UnitSystem): Ink[] {
  const { placed, face, openings } = cut;
  const whole = placed.dimensions.face(face);
  const zone = placed.dimensions.sheetZone(face);
  const outline = rect(view, 0, whole.u1, 0, whole.v1);
  const rects = openings.map((opening) => ({ opening, at: openingRect(cut, opening, view) }));
  return [
    box(outline, { fill: "paper" }),
    ...keepZones(cut, view),
    ...(face === "roof" || face === "floor" ? [] : folds(cut, view)),
    box(rect(view, alongSpan(cut, zone.u0, zone.u1)[0], alongSpan(cut, zone.u0, zone.u1)[1], zone.v0, zone.v1), {
      pen: "fine",
    }),
    path(boxD(outline), { pen: "profile" }),
    path(fittings(cut, view), { fill: "ink" }),
    ...rects.flatMap(({ opening, at }) => openingInk(opening.use, at, "ink")),
    ...rects.flatMap(({ opening, at }) => hexTag({ x: at.x + at.width / 2, y: at.y + at.height / 2 }, opening.tag)),
    ...alongString(
      {
        mm: [0, whole.u1, ...openings.flatMap((opening) => edges(opening))].map((mm) => alongFace(cut, mm)),
        at: view.x,
      },
      outline.y + outline.height + 14,
      outline.y + outline.height + 3,
      units,
    ),
    ...alongString(
      { mm: [0, whole.u1], at: view.x },
      outline.y + outline.height + 30,
      outline.y + outline.height + 16,
      units,
    ),
    ...heights(cut, view, outline, units),
  ];
}

const edges = ({ offsetUm, widthUm }: Opening): [number, number] => [offsetUm / 1000, (offsetUm + widthUm) / 1000];

/** The rectangle of an opening on the paper of its face, mm at full size. */
export function openingOnFace(cut: CutFace, opening: Opening): PaperRect {
  const [u0Mm, u1Mm] = alongSpan(cut, ...edges(opening));
  return { u0Mm, u1Mm, z0Mm: opening.sillUm / 1000, z1Mm: (opening.sillUm + opening.heightUm) / 1000 };
}

/** The same on paper, from the projection that is inked. */
export function openingRect(cut: CutFace, opening: Opening, view: View): Box {
  const { u0Mm, u1Mm, z0Mm, z1Mm } = openingOnFace(cut, opening);
  return rect(view, u0Mm, u1Mm, z0Mm, z1Mm);
}

function alongSpan(cut: CutFace, a: number, b: number): [number, number] {
  const [u, v] = [alongFace(cut, a), alongFace(cut, b)];
  return [Math.min(u, v), Math.max(u, v)];
}

const rect = (view: View, u0: number, u1: number, v0: number, v1: number): Box => ({
  x: view.x(u0),
  y: view.y(v1),
  width: view.length(u1 - u0),
  height: view.length(v1 - v0),
});

/** Posts, rails, header and sill: never cut unless a sheet says so. */
function keepZones({ placed, face }: CutFace, view: View): Ink[] {
  const whole = placed.dimensions.face(face);
  const zone = placed.dimensions.sheetZone(face);
  const [z0, z1] = mirrored[face] ? [whole.u1 - zone.u1, whole.u1 - zone.u0] : [zone.u0, zone.u1];
  const zones = [
    rect(view, 0, whole.u1, 0, zone.v0),
    rect(view, 0, whole.u1, zone.v1, whole.v1),
    rect(view, 0, z0, zone.v0, zone.v1),
    rect(view, z1, whole.u1, zone.v0, zone.v1),
  ];
  return zones
    .filter(({ width, height }) => width > 0.5 && height > 0.5)
    .map((at) => path(diagonals(at, 5), { pen: "hair", tone: "pencil" }));
}

function folds(cut: CutFace, view: View): Ink[] {
  const { placed, face, openings } = cut;
  const zone = placed.dimensions.sheetZone(face);
  const pitch = placed.dimensions.corrugationPitchMm[face === "left" || face === "right" ? "side" : "end"];
  const [u0Mm, u1Mm] = alongSpan(cut, zone.u0, zone.u1);
  const cuts = openings.map((opening) => openingOnFace(cut, opening));
  const d = foldLines({ u0Mm, u1Mm, z0Mm: zone.v0, z1Mm: zone.v1 }, pitch, cuts)
    .filter(({ light }) => !light)
    .flatMap(({ uMm, runsMm }) => runsMm.map(({ z0Mm, z1Mm }) => `M${view.x(uMm)} ${view.y(z0Mm)}V${view.y(z1Mm)}`))
    .join("");
  return d === "" ? [] : [path(d, { pen: "hair", tone: "pencil" })];
}

function fittings({ placed, face }: CutFace, view: View): string {
  const whole = placed.dimensions.face(face);
  const { lengthMm, widthMm, heightMm } = placed.dimensions.fitting;
  const along = face === "front" || face === "door" ? widthMm : lengthMm;
  const up = face === "roof" || face === "floor" ? widthMm : heightMm;
  return [0, whole.u1 - along]
    .flatMap((u) => [0, whole.v1 - up].map((v) => boxD(rect(view, u, u + along, v, v + up))))
    .join("");
}

/** Sill and head of every height that occurs, at the left; the whole height at the right. */
function heights({ placed, face, openings }: CutFace, view: View, outline: Box, units: UnitSystem): Ink[] {
  const { v1 } = placed.dimensions.face(face);
  const levels = openings.flatMap(({ sillUm, heightUm }) => [sillUm / 1000, (sillUm + heightUm) / 1000]);
  return [
    ...uprightString({ mm: [0, v1, ...levels], at: view.y }, outline.x - 14, outline.x - 3, units),
    ...uprightString({ mm: [0, v1], at: view.y }, outline.x + outline.width + 18, outline.x + outline.width + 3, units),
  ];
}
