import { faceFrame, placeContainer, pointOnFace, type PlacedContainer, type PaperRect } from "@cornerway/engine";
import { faces, type Container, type Face, type Opening, type PointMm, type Scheme } from "@cornerway/schema";
import type { ViewPoint } from "../view-transform.ts";

/** Paper between two faces, mm: room for the dimensions of what is cut in them. */
export const betweenMm = 1000;

/** One face laid flat, seen from outside; `toPaper` takes lengths along and up the face to the paper. */
export type FlatFace = {
  face: Face;
  lengthMm: number;
  heightMm: number;
  outline: PaperRect;
  sheet: PaperRect;
  openings: readonly (PaperRect & { opening: Opening })[];
  /** True where up the face is down the paper. */
  upsideDown: boolean;
  /** True where along the face runs to the left. */
  backwards: boolean;
};

export type UnfoldedModel = {
  container: Container;
  placed: PlacedContainer;
  flats: readonly FlatFace[];
  extent: PaperRect;
};

/**
 * All six faces of a unit laid flat round its right side, as a box folded open: roof above it, the left side above the
 * roof, the floor below, the ends at either side. Every face is seen from outside.
 */
export function unfoldedModel(scheme: Scheme, container: Container): UnfoldedModel {
  const placed = placeContainer(container);
  const openings = scheme.openings.filter(({ containerId }) => containerId === container.id);
  const flats = faces.map((face) => flatFace(placed, face, openings));
  return { container, placed, flats, extent: extentOf(flats.map(({ outline }) => outline)) };
}

function flatFace(placed: PlacedContainer, face: Face, openings: readonly Opening[]): FlatFace {
  const { u1: lengthMm, v1: heightMm } = placed.dimensions.face(face);
  const { u0, u1, v0, v1 } = placed.dimensions.sheetZone(face);
  const rect = (from: ViewPoint, to: ViewPoint): PaperRect => ({
    u0Mm: Math.min(from.uMm, to.uMm),
    u1Mm: Math.max(from.uMm, to.uMm),
    z0Mm: Math.min(from.vMm, to.vMm),
    z1Mm: Math.max(from.vMm, to.vMm),
  });
  const part = (fromU: number, toU: number, fromV: number, toV: number) =>
    rect(onPaper(placed, face, fromU, fromV), onPaper(placed, face, toU, toV));
  return {
    face,
    lengthMm,
    heightMm,
    outline: part(0, lengthMm, 0, heightMm),
    sheet: part(u0, u1, v0, v1),
    upsideDown: face === "left" || face === "floor",
    backwards: face === "front",
    openings: openings
      .filter((opening) => opening.face === face)
      .map((opening) => {
        const u = opening.offsetUm / 1000;
        const v = opening.sillUm / 1000;
        return { opening, ...part(u, u + opening.widthUm / 1000, v, v + opening.heightUm / 1000) };
      }),
  };
}

/** A place on a face as a place on the paper. */
export function onPaper({ dimensions }: PlacedContainer, face: Face, uMm: number, vMm: number): ViewPoint {
  const { lengthMm, widthMm, heightMm } = dimensions;
  switch (face) {
    case "right":
      return { uMm, vMm };
    case "roof":
      return { uMm, vMm: heightMm + betweenMm + vMm };
    case "left":
      return { uMm, vMm: 2 * heightMm + widthMm + 2 * betweenMm - vMm };
    case "floor":
      return { uMm, vMm: -betweenMm - vMm };
    case "front":
      return { uMm: -betweenMm - uMm, vMm };
    case "door":
      return { uMm: lengthMm + betweenMm + uMm, vMm };
  }
}

/** The face a place on the paper lies on, and the site point there; null between the faces. */
export function siteUnderPaper(
  { placed, flats }: UnfoldedModel,
  at: ViewPoint,
  onFace?: Face,
): { face: Face; at: PointMm } | null {
  const flat = flats.find(({ face, outline }) => (onFace === undefined ? inside(outline, at) : face === onFace));
  if (flat === undefined) return null;
  const { outline, upsideDown, backwards } = flat;
  const uMm = backwards ? outline.u1Mm - at.uMm : at.uMm - outline.u0Mm;
  const vMm = upsideDown ? outline.z1Mm - at.vMm : at.vMm - outline.z0Mm;
  return { face: flat.face, at: pointOnFace(faceFrame(placed, flat.face), uMm, vMm) };
}

const inside = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect, { uMm, vMm }: ViewPoint): boolean =>
  uMm >= u0Mm && uMm <= u1Mm && vMm >= z0Mm && vMm <= z1Mm;

const extentOf = (rects: readonly PaperRect[]): PaperRect => ({
  u0Mm: Math.min(...rects.map(({ u0Mm }) => u0Mm)),
  u1Mm: Math.max(...rects.map(({ u1Mm }) => u1Mm)),
  z0Mm: Math.min(...rects.map(({ z0Mm }) => z0Mm)),
  z1Mm: Math.max(...rects.map(({ z1Mm }) => z1Mm)),
});
