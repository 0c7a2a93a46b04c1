import {
  foldLines,
  onPaper,
  sectionSizeMm,
  type ElevationFace,
  type ElevationModel,
  type ElevationOpening,
  type PaperRect,
} from "@cornerway/engine";
import { pt, type Ink } from "../paper/ink.ts";
import { box, boxD, line, path, type Box } from "../paper/shapes.ts";
import type { View } from "../paper/view.ts";
import { diagonals } from "./hatch.ts";
import { openingInk } from "./opening.ts";
import { hexTag, label } from "./signs.ts";

export const rectOnPaper = (view: View, { u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect): Box => ({
  x: view.x(u0Mm),
  y: view.y(z1Mm),
  width: view.length(u1Mm - u0Mm),
  height: view.length(z1Mm - z0Mm),
});

/** Every face of an elevation, farthest first, each over what is behind it; `plain` leaves the folds of the sheet out. */
export const elevationFacesInk = ({ faces }: ElevationModel, view: View, plain = false): Ink[] =>
  faces.flatMap((face) => faceInk(face, view, plain));

function faceInk(face: ElevationFace, view: View, plain: boolean): Ink[] {
  const at = rectOnPaper(view, face);
  const tone = face.beyond || plain ? "pencil" : "ink";
  return [
    box(at, { fill: "paper" }),
    ...(plain ? [] : folds(face, view)),
    path(memberLines(face, view), { pen: face.beyond ? "hair" : "fine", tone }),
    path(boxD(at), { pen: face.beyond ? "edge" : "profile", tone }),
    path(fittings(face, view), { fill: tone }),
    ...face.openings.flatMap((opening) => openingInk(opening.opening.use, rectOnPaper(view, opening), tone)),
    ...(plain ? [] : face.openings.flatMap((opening) => framingInk(opening, view))),
  ];
}

/** Jambs, header and sill of a framed opening, to size, beside its clear rectangle. */
function framingInk({ opening, ...rect }: ElevationOpening, view: View): Ink[] {
  if (!opening.framed) return [];
  const at = rectOnPaper(view, rect);
  const deep = (section: string | undefined) =>
    Math.max(1.6, view.length(section === undefined ? 60 : sectionSizeMm(section).depthMm));
  const jamb = deep(opening.framing?.jamb);
  const header = deep(opening.framing?.header);
  const outer = { x: at.x - jamb, y: at.y - header, width: at.width + 2 * jamb, height: at.height + header };
  const parts: Box[] = [
    { x: outer.x, y: outer.y, width: jamb, height: outer.height },
    { x: at.x + at.width, y: outer.y, width: jamb, height: outer.height },
    { x: at.x, y: outer.y, width: at.width, height: header },
  ];
  return parts.flatMap((part) => [
    box(part, { fill: "paper", pen: "edge" }),
    path(diagonals(part, 3.2), { pen: "hair" }),
  ]);
}

/** Sheet between posts and rails, on paper. */
function sheetOf(face: ElevationFace): PaperRect {
  const zone = face.placed.dimensions.sheetZone(face.face);
  const [a, b] = [onPaper(face, zone.u0), onPaper(face, zone.u1)];
  const base = face.placed.baseZMm;
  return { u0Mm: Math.min(a, b), u1Mm: Math.max(a, b), z0Mm: base + zone.v0, z1Mm: base + zone.v1 };
}

/** Folds at their true pitch, every second one lighter, stopping at openings; the two leaves of a door end instead. */
function folds(face: ElevationFace, view: View): Ink[] {
  if (face.face === "door" && face.openings.length === 0) return doorEnd(face, view);
  const { side, end } = face.placed.dimensions.corrugationPitchMm;
  const pitch = (face.face === "left" || face.face === "right" ? side : end) * face.squeeze;
  const all = foldLines(sheetOf(face), pitch, face.openings);
  const d = (light: boolean) =>
    all
      .filter((fold) => fold.light === light)
      .flatMap(({ uMm, runsMm }) => runsMm.map(({ z0Mm, z1Mm }) => `M${view.x(uMm)} ${view.y(z0Mm)}V${view.y(z1Mm)}`))
      .join("");
  const crowded = view.length(pitch) / 2 < 2.6;
  const strong = d(false);
  return [
    ...(strong === "" ? [] : [path(strong, { pen: "hair", tone: face.beyond ? "ruling" : "graphite" })]),
    ...(crowded || face.beyond || d(true) === "" ? [] : [path(d(true), { pen: "hair", tone: "ruling" })]),
  ];
}

/** Two leaves with their locking bars. */
function doorEnd(face: ElevationFace, view: View): Ink[] {
  const sheet = rectOnPaper(view, sheetOf(face));
  const middle = sheet.x + sheet.width / 2;
  const bars = [0.14, 0.36, 0.64, 0.86].map(
    (share) => `M${pt(sheet.x + sheet.width * share)} ${pt(sheet.y + 2)}V${pt(sheet.y + sheet.height - 2)}`,
  );
  return [
    line({ x: middle, y: sheet.y }, { x: middle, y: sheet.y + sheet.height }, "fine", {
      tone: face.beyond ? "pencil" : "ink",
    }),
    path(bars.join(""), { pen: "edge", tone: face.beyond ? "ruling" : "graphite" }),
  ];
}

/** Inner edges of rails and posts, to size. */
function memberLines(face: ElevationFace, view: View): string {
  const at = rectOnPaper(view, face);
  const sheet = rectOnPaper(view, sheetOf(face));
  const [right, foot] = [sheet.x + sheet.width, sheet.y + sheet.height];
  const d = (x0: number, y0: number, x1: number, y1: number) => `M${pt(x0)} ${pt(y0)}L${pt(x1)} ${pt(y1)}`;
  return (
    d(at.x, sheet.y, at.x + at.width, sheet.y) +
    d(at.x, foot, at.x + at.width, foot) +
    d(sheet.x, sheet.y, sheet.x, foot) +
    d(right, sheet.y, right, foot)
  );
}

/** Corner fittings, solid and to size; on a 45 ft side also those at the spacing of a 40 ft one. */
function fittings(face: ElevationFace, view: View): string {
  const { fitting, lengthMm, intermediateHoleSpacingMm, holeSpacingLengthwiseMm } = face.placed.dimensions;
  const long = face.face === "left" || face.face === "right";
  const wide = long ? fitting.lengthMm : fitting.widthMm;
  const total = face.placed.dimensions.face(face.face).u1;
  const between = intermediateHoleSpacingMm / 2;
  const inner =
    long && between > 0 && between < holeSpacingLengthwiseMm / 2
      ? [lengthMm / 2 - between - wide / 2, lengthMm / 2 + between - wide / 2]
      : [];
  return [0, total - wide, ...inner].map((start) => fittingPair(face, view, start, wide)).join("");
}

function fittingPair(face: ElevationFace, view: View, start: number, wide: number): string {
  const [a, b] = [view.x(onPaper(face, start)), view.x(onPaper(face, start + wide))];
  const high = view.length(face.placed.dimensions.fitting.heightMm);
  const at = (y: number) => boxD({ x: Math.min(a, b), y, width: Math.abs(b - a), height: high });
  return at(view.y(face.z1Mm)) + at(view.y(face.z0Mm) - high);
}

/** Names of containers and tags of what is cut, on the faces at the front. */
export function elevationTags({ faces }: ElevationModel, view: View): Ink[] {
  const front = faces.filter(({ beyond }) => !beyond);
  return front.flatMap((face) => {
    const at = rectOnPaper(view, face);
    return [
      ...face.openings.flatMap(({ opening, ...rect }) => {
        const cut = rectOnPaper(view, rect);
        return hexTag({ x: cut.x + cut.width / 2, y: cut.y + cut.height / 2 }, opening.tag);
      }),
      ...label(freeSpot(face, view, at), face.container.tag, { size: 10, strong: true }),
    ];
  });
}

/** Where the name of a container stands clear of its openings. */
function freeSpot(face: ElevationFace, view: View, at: Box): { x: number; y: number } {
  const y = at.y + at.height * 0.22;
  const shares = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9];
  const clear = shares.find((share) => {
    const x = at.x + at.width * share;
    return face.openings.every((opening) => {
      const cut = rectOnPaper(view, opening);
      return x < cut.x - 12 || x > cut.x + cut.width + 12 || y < cut.y - 8 || y > cut.y + cut.height + 10;
    });
  });
  return clear === undefined
    ? { x: at.x + at.width / 2, y: at.y + at.height * 0.12 }
    : { x: at.x + at.width * clear, y };
}
