import type { Six } from "./analytical-model.ts";
import { nodeName, type BuildingModel, type PlacedUnit } from "./building-model.ts";

type Joints = Pick<BuildingModel, "between" | "springs" | "links" | "supports">;

/**
 * The nodes on which something between the containers acts with a moment: they are turned by it, or kept from turning. Bearings
 * and locks of fittings only push and pull.
 */
export function momentNodes({ between, springs, links, supports }: Joints): ReadonlySet<string> {
  const nodes = new Set<string>();
  for (const { i, j } of between.beams) nodes.add(i).add(j);
  for (const { i, j, k } of [...springs, ...links]) {
    if (!turns(k)) continue;
    nodes.add(i);
    if (j !== undefined) nodes.add(j);
  }
  for (const { node, fix } of supports) if (fix.some((freedom) => freedom.startsWith("r"))) nodes.add(node);
  for (const { nodal = [] } of Object.values(between.loads))
    for (const { node, F } of nodal) if (turns(F)) nodes.add(node);
  return nodes;
}

const turns = (six: Six): boolean => six[3] !== 0 || six[4] !== 0 || six[5] !== 0;

/** The container as it stands among others: with those of its points on which they act with a moment. */
export function withMomentNodes(unit: PlacedUnit, nodes: ReadonlySet<string>): PlacedUnit {
  const { id, fragment } = unit;
  const own = fragment.retained.filter((node) => nodes.has(nodeName(id, node)));
  if (own.length === 0) return unit;
  const key = `${fragment.key} moments at ${own.join(" ")}`;
  return { ...unit, fragment: { ...fragment, key, momentNodes: own } };
}
