import type { Scheme } from "@cornerway/schema";
import { placeContainer, solidCorners } from "../geometry/place.ts";
import { gridLetter } from "./grid-letter.ts";

export type GridLine = { label: string; atMm: number };

/** Numbers stand on lines of equal x, west to east; letters on lines of equal y, north to south. */
export type Grid = { numbers: readonly GridLine[]; letters: readonly GridLine[] };

/** Faces of neighbouring units closer than this share a grid line; a joint is no bay. */
const sharedWithinMm = 160;

/** Grid lines through the faces that units set square on the site turn to each other and to the outside. */
export function gridOf(scheme: Scheme, revisionLetters: readonly string[]): Grid {
  const square = scheme.containers.filter(({ turnMdeg }) => turnMdeg % 90_000 === 0);
  const corners = square.flatMap((container) => solidCorners(placeContainer(container)));
  const west = clustered(corners.map(({ xMm }) => xMm));
  const north = clustered(corners.map(({ yMm }) => yMm)).toReversed();
  return {
    numbers: west.map((atMm, index) => ({ label: `${index + 1}`, atMm })),
    letters: north.map((atMm, index) => ({ label: gridLetter(index, revisionLetters), atMm })),
  };
}

/** Rising places, each group within reach of its neighbour brought to the group's outermost face from the west or south. */
function clustered(placesMm: readonly number[]): number[] {
  const rising = [...new Set(placesMm.map((at) => Math.round(at)))].toSorted((a, b) => a - b);
  return rising.filter((at, index) => index === 0 || at - (rising[index - 1] ?? at) > sharedWithinMm);
}
