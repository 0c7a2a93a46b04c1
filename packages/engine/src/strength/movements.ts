import type { SolvedRun } from "./solve-runs.ts";

/** Level movement or force, x and y of the site. */
export type Plan = readonly [number, number];

/** Movement of a node of the solution, mm, site axes. Throws a RangeError for a node it has not. */
export function movementOf(
  node: string,
  { nodeIds, movement }: Pick<SolvedRun, "nodeIds" | "movement">,
): readonly [number, number, number] {
  const n = placesOf(nodeIds).get(node);
  if (n === undefined) throw new RangeError(`the solution has no node ${node}`);
  return [movement[6 * n] ?? 0, movement[6 * n + 1] ?? 0, movement[6 * n + 2] ?? 0];
}

/** The level part of it. */
export function planMovement(node: string, solved: Pick<SolvedRun, "nodeIds" | "movement">): Plan {
  const [x, y] = movementOf(node, solved);
  return [x, y];
}

/** How far the head of an upright line moves beyond its foot, mm. */
export function leanOf(
  { foot, head }: { readonly foot: string; readonly head: string },
  solved: Pick<SolvedRun, "nodeIds" | "movement">,
): Plan {
  const [low, high] = [planMovement(foot, solved), planMovement(head, solved)];
  return [high[0] - low[0], high[1] - low[1]];
}

export const lengthOf = ([x, y]: Plan): number => Math.sqrt(x * x + y * y);

/** All runs of one model share their list of names. */
const known = new WeakMap<readonly string[], ReadonlyMap<string, number>>();

function placesOf(nodeIds: readonly string[]): ReadonlyMap<string, number> {
  const found = known.get(nodeIds);
  if (found !== undefined) return found;
  const places = new Map(nodeIds.map((id, n) => [id, n]));
  known.set(nodeIds, places);
  return places;
}
