import type { UnitSystem } from "@cornerway/schema";
import { dimensionChain, type DimensionSegment } from "../dimension/dimension-chain.ts";
import type { FlatFace } from "./unfolded-model.ts";

/** A string of dimensions beside a face, in mm of the paper. `text` runs along the string. */
export type FaceDimensions = { upright: boolean; placesMm: readonly number[]; segments: readonly DimensionSegment[] };

/**
 * What is cut in a face, from the outer faces of its fittings: along the face every opening, up the face the one chosen
 * or the only one. Null where nothing is cut.
 */
export function faceDimensions(
  flat: FlatFace,
  chosenId: string | null,
  units: UnitSystem,
): { along: FaceDimensions; up: FaceDimensions | null } | null {
  const { openings, outline } = flat;
  if (openings.length === 0) return null;
  const edges = openings.flatMap(({ u0Mm, u1Mm }) => [u0Mm, u1Mm]);
  const one =
    openings.find(({ opening }) => opening.id === chosenId) ?? (openings.length === 1 ? openings[0] : undefined);
  return {
    along: string(false, [outline.u0Mm, ...edges, outline.u1Mm], units),
    up: one === undefined ? null : string(true, [outline.z0Mm, one.z0Mm, one.z1Mm, outline.z1Mm], units),
  };
}

function string(upright: boolean, unsorted: readonly number[], units: UnitSystem): FaceDimensions {
  const rising = unsorted.toSorted((a, b) => a - b);
  const placesMm = rising.filter((at, index) => index === 0 || at - (rising[index - 1] ?? at) > leastMm);
  return { upright, placesMm, segments: dimensionChain(placesMm, units) };
}

/** Edges nearer than this are one place on the string. */
const leastMm = 1;
