import { touchMm } from "../geometry/tolerances.ts";

/**
 * A cut that is not framed leaves a bare upright edge of sheet: shear flow builds up from nothing there, over about a sixth of
 * the wall's height, and with real rails the cut acts about 90 mm wider at each such edge. Derived from a fold-by-fold model of
 * a side wall of a 40 ft unit (shared/reference/walls.json; test: bare-edges.test.ts) and taken for ends and short units too.
 */
export const BARE_EDGE_MM = 90;

/** What is taken of openings that are not framed. */
export const bareEdgeRule = `over ${BARE_EDGE_MM} mm beside each bare upright edge the sheet is taken to carry nothing, and across the opening the rails carry by themselves; a jamb would hold the edge (derived from a fold-by-fold model)`;

/** Said in every working that rests on it. */
export const bareEdgeSaid = `not framed: ${bareEdgeRule}`;

type Stretch = { readonly u0: number; readonly u1: number };

/** A cut as wide as it acts, mm along a wall of `lengthMm` between its posts: a post at its edge holds what is left of the sheet. */
export const actingCut = ({ u0, u1 }: Stretch, lengthMm: number): Stretch => ({
  u0: Math.max(0, u0 - BARE_EDGE_MM),
  u1: Math.min(lengthMm, u1 + BARE_EDGE_MM),
});

/**
 * Cuts of one wall, as they act: a bare edge less than that far from a frame ends at its jamb. Past it no sheet would be left on
 * either side of the jamb, above and below its frame, to hold the frame by. Judged, no published source.
 */
export function endingAtFrames<Cut extends ActingCut>(cuts: readonly Cut[]): Cut[] {
  return cuts.map((cut) => {
    if (cut.framed) return cut;
    const frames = cuts.filter(({ framed, wall }) => framed && wall === cut.wall);
    const right = frames.map(({ u0 }) => u0).filter((u) => u < cut.u1 && u >= cut.u1 - BARE_EDGE_MM - touchMm);
    const left = frames.map(({ u1 }) => u1).filter((u) => u > cut.u0 && u <= cut.u0 + BARE_EDGE_MM + touchMm);
    return { ...cut, u0: Math.max(cut.u0, ...left), u1: Math.min(cut.u1, ...right) };
  });
}

type ActingCut = Stretch & { readonly framed: boolean; readonly wall: string };

/** Whether a cut has an upright edge with neither jamb nor post. */
export const hasBareEdge = ({ framed, u0, u1 }: Stretch & { readonly framed: boolean }, lengthMm: number): boolean =>
  !framed && (u0 > 0 || u1 < lengthMm);
