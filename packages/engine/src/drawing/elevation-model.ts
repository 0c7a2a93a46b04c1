import type { Scheme } from "@cornerway/schema";
import { placeContainer } from "../geometry/place.ts";
import { storeysOf } from "../geometry/storeys.ts";
import type { Side } from "./side.ts";
import { gridOf, type GridLine } from "./grid-lines.ts";
import type { PaperRect } from "./corrugation.ts";
import { seenOnElevation, type SeenObject } from "./seen-objects.ts";
import { elevationFaces, type ElevationFace } from "./elevation-faces.ts";
import { elevationPads, type ElevationPad } from "./elevation-pads.ts";
import { elevationPosts, type ElevationPost } from "./elevation-posts.ts";

export type Level = { storey: number | null; name: string; zMm: number };

/** All an elevation draws, mm on its paper; what is on it in px follows from the transform. */
export type ElevationModel = {
  side: Side;
  faces: readonly ElevationFace[];
  posts: readonly ElevationPost[];
  pads: readonly ElevationPad[];
  objects: readonly SeenObject[];
  /** Left to right as seen. */
  grid: readonly GridLine[];
  levels: readonly Level[];
  groundMm: number;
  /** The building above ground; null while nothing is drawn. */
  extent: PaperRect | null;
};

export function elevationModel(scheme: Scheme, side: Side, revisionLetters: readonly string[] = []): ElevationModel {
  const faces = elevationFaces(scheme, side);
  return {
    side,
    faces,
    posts: elevationPosts(scheme, side, faces),
    pads: elevationPads(scheme, side, faces),
    objects: seenOnElevation(scheme, side),
    grid: gridSeen(scheme, side, revisionLetters),
    levels: levelsOf(scheme),
    groundMm: scheme.site.groundZUm / 1000,
    extent: extentOf(faces),
  };
}

/** Level marks: each storey, and the roof of the highest unit. */
export function levelsOf(scheme: Scheme): Level[] {
  const storeys = storeysOf(scheme);
  const levels: Level[] = storeys.map(({ index, name, levelMm }) => ({ storey: index, name, zMm: levelMm }));
  const tops = scheme.containers.map((container) => placeContainer(container).topZMm);
  return tops.length === 0
    ? [{ storey: 0, name: "Ground", zMm: scheme.site.groundZUm / 1000 }]
    : [...levels, { storey: null, name: "Roof", zMm: Math.max(...tops) }];
}

function gridSeen(scheme: Scheme, side: Side, revisionLetters: readonly string[]): GridLine[] {
  const { numbers, letters } = gridOf(scheme, revisionLetters);
  const seen = side === "south" || side === "north" ? numbers : letters;
  const turned = side === "north" || side === "west" ? -1 : 1;
  return seen.map(({ label, atMm }) => ({ label, atMm: atMm * turned })).toSorted((a, b) => a.atMm - b.atMm);
}

function extentOf(faces: readonly ElevationFace[]): PaperRect | null {
  if (faces.length === 0) return null;
  return {
    u0Mm: Math.min(...faces.map(({ u0Mm }) => u0Mm)),
    u1Mm: Math.max(...faces.map(({ u1Mm }) => u1Mm)),
    z0Mm: Math.min(...faces.map(({ z0Mm }) => z0Mm)),
    z1Mm: Math.max(...faces.map(({ z1Mm }) => z1Mm)),
  };
}
