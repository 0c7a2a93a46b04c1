import type { ModelNode } from "../model/analytical-model.ts";

export type WallSide = "right" | "door" | "left" | "front";

/** Half the distances between the post lines of a container, mm. */
export type PostLines = { readonly halfLengthMm: number; readonly halfWidthMm: number };

export type UnitPlace = { readonly x: number; readonly y: number };

/** The four walls unrolled from the front right post on, as seen from outside: right, door end, left, front. */
export const postLinesOf = (nodes: readonly ModelNode[]): PostLines => ({
  halfLengthMm: nodes.reduce((most, { x }) => Math.max(most, x), 0),
  halfWidthMm: nodes.reduce((most, { y }) => Math.max(most, y), 0),
});

/** The wall both places stand in, or null for a line that crosses the container. */
export function wallOf(a: UnitPlace, b: UnitPlace, { halfLengthMm, halfWidthMm }: PostLines): WallSide | null {
  if (on(a.y, b.y, -halfWidthMm)) return "right";
  if (on(a.y, b.y, halfWidthMm)) return "left";
  if (on(a.x, b.x, halfLengthMm)) return "door";
  return on(a.x, b.x, -halfLengthMm) ? "front" : null;
}

/** +1 where the wall's own way, along x or y, is to the right as seen from outside. */
export const rightwards = (wall: WallSide): 1 | -1 => (wall === "right" || wall === "door" ? 1 : -1);

/** How far along the unrolled walls, mm, a place in this wall is. */
export function along(wall: WallSide, { x, y }: UnitPlace, { halfLengthMm: l, halfWidthMm: w }: PostLines): number {
  if (wall === "right") return x + l;
  if (wall === "door") return 2 * l + y + w;
  return wall === "left" ? 2 * l + 2 * w + l - x : 4 * l + 2 * w + w - y;
}

/** Model nodes are named to a tenth of a millimetre. */
const SAME_LINE_MM = 0.06;

export const on = (a: number, b: number, line: number): boolean =>
  Math.abs(a - line) < SAME_LINE_MM && Math.abs(b - line) < SAME_LINE_MM;

/** All the way round. */
export const roundMm = ({ halfLengthMm, halfWidthMm }: PostLines): number => 4 * (halfLengthMm + halfWidthMm);

/** The place so far along the unrolled walls; at a corner, in the wall that `towards` lies in. */
export function onWallAt(sMm: number, towards: number, lines: PostLines): UnitPlace & { readonly wall: WallSide } {
  const { halfLengthMm: l, halfWidthMm: w } = lines;
  const round = roundMm(lines);
  const wrapped = Math.floor(towards / round) * round;
  const [s, t] = [sMm - wrapped, towards - wrapped];
  if (t < 2 * l) return { wall: "right", x: s - l, y: -w };
  if (t < 2 * l + 2 * w) return { wall: "door", x: l, y: s - 2 * l - w };
  if (t < 4 * l + 2 * w) return { wall: "left", x: 3 * l + 2 * w - s, y: w };
  return { wall: "front", x: -l, y: 4 * l + 3 * w - s };
}
