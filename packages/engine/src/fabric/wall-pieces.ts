import type { FaceRect } from "../catalog/container-dimensions.ts";

/** What is left of a wall in its length: the share cut away (0…1) and the shortest full-height piece, mm. */
export type WallPieces = { readonly cutShare: number; readonly shortestPierMm: number };

type Stretch = { readonly u0: number; readonly u1: number };

/**
 * A wall of `lengthMm` with its cuts. Openings above one another count once. Pieces are measured from the ends of the
 * wall, corner posts with them; where nothing is left the shortest is 0.
 */
export function wallPieces(lengthMm: number, cuts: readonly FaceRect[]): WallPieces {
  const merged = mergedStretches(lengthMm, cuts);
  const cutMm = merged.reduce((sum, { u0, u1 }) => sum + u1 - u0, 0);
  const piers = piecesBetween(lengthMm, merged).map(({ u0, u1 }) => u1 - u0);
  return { cutShare: cutMm / lengthMm, shortestPierMm: piers.length === 0 ? 0 : Math.min(...piers) };
}

/** The pieces of a length that no cut touches, in order. */
export const uncutPieces = (lengthMm: number, cuts: readonly Stretch[]): Stretch[] =>
  piecesBetween(lengthMm, mergedStretches(lengthMm, cuts));

function mergedStretches(lengthMm: number, cuts: readonly Stretch[]): Stretch[] {
  const within = cuts
    .map(({ u0, u1 }) => ({ u0: Math.max(0, u0), u1: Math.min(lengthMm, u1) }))
    .filter(({ u0, u1 }) => u1 > u0)
    .toSorted((a, b) => a.u0 - b.u0 || a.u1 - b.u1);
  const merged: Stretch[] = [];
  for (const cut of within) {
    const last = merged.at(-1);
    if (last !== undefined && cut.u0 <= last.u1)
      merged[merged.length - 1] = { u0: last.u0, u1: Math.max(last.u1, cut.u1) };
    else merged.push(cut);
  }
  return merged;
}

function piecesBetween(lengthMm: number, merged: readonly Stretch[]): Stretch[] {
  const starts = [0, ...merged.map(({ u1 }) => u1)];
  const ends = [...merged.map(({ u0 }) => u0), lengthMm];
  return starts.map((u0, at) => ({ u0, u1: ends[at] ?? lengthMm })).filter(({ u0, u1 }) => u1 > u0);
}
