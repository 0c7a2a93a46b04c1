import { changesOnElevation, changesOnPlan, storeysOf } from "@cornerway/engine";
import type { ElementChange, Pair, Scheme } from "@cornerway/schema";
import type { Side } from "../../drawing/contract.ts";
import { sides } from "../../drawing/sides.ts";

/** A view that shows one of these changes: a side of the building, else the plan of a storey; null where none does. */
export function findView(
  changes: readonly ElementChange[],
  { before, after }: Pair<Scheme>,
  ids: readonly string[],
): { side: Side } | { storey: number } | null {
  const own = changes.filter(({ id }) => ids.includes(id));
  const side = sides.find((each) => changesOnElevation(own, before, after, each).length > 0);
  if (side !== undefined) return { side };
  const storey = storeysOf(after).find(({ index }) => changesOnPlan(own, before, after, index).length > 0);
  return storey === undefined ? null : { storey: storey.index };
}
