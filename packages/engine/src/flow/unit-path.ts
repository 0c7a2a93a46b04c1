import type { UnitSolution } from "../analysis/recover-unit.ts";
import type { ModelNode } from "../model/analytical-model.ts";
import type { PlacedUnit, UnitFragment } from "../model/building-model.ts";
import { bundles, leavesPosts, type Bundle, type WallEnds } from "./strands.ts";
import { verticalFlow, type FlowNode, type VerticalFlow } from "./vertical-flow.ts";

/** How load goes through one container under one run. */
export type UnitPath = {
  readonly unit: PlacedUnit;
  readonly flow: VerticalFlow;
  readonly ends: WallEnds;
  readonly bundles: readonly Bundle[];
};

export function unitPath(unit: PlacedUnit, inside: UnitSolution): UnitPath {
  const flow = verticalFlow(unit.fragment, inside);
  const ends = endsOf(unit.fragment);
  return { unit, flow, ends, bundles: bundles(flow, ends) };
}

/** The force that leaves the posts at its greatest, over bearings it comes in by or goes out by, N. */
export function greatestOffPosts({ flow, ends, bundles: all }: UnitPath): number {
  const sums = new Map<string, number>();
  for (const bundle of all.filter((one) => leavesPosts(flow, ends, one)))
    for (const [way, end] of Object.entries({ from: bundle.from, to: bundle.to }))
      if (end !== null) sums.set(`${way} ${end}`, (sums.get(`${way} ${end}`) ?? 0) + bundle.forceN);
  return Math.max(0, ...sums.values());
}

/** One length of an upright and the vertical force in it, downwards positive. */
export type UprightLength = { readonly topMm: number; readonly footMm: number; readonly forceN: number };

/** The force down one upright of the walls, from its top to its foot: member and sheet beside it. */
export function alongUpright({ nodes, edges }: VerticalFlow, at: Pick<FlowNode, "x" | "y">): UprightLength[] {
  const onIt = ({ x, y }: FlowNode): boolean => Math.abs(x - at.x) < SAME_MM && Math.abs(y - at.y) < SAME_MM;
  return edges
    .flatMap(({ from, to, forceN, port }): UprightLength[] => {
      const [a, b] = [nodes[from], nodes[to]];
      if (a === undefined || b === undefined || port % 2 === 1 || !onIt(a)) return [];
      return [{ topMm: Math.max(a.z, b.z), footMm: Math.min(a.z, b.z), forceN: port === 0 ? -forceN : forceN }];
    })
    .toSorted((a, b) => b.topMm - a.topMm);
}

/** Nodes are named to a tenth of a millimetre. */
const SAME_MM = 0.06;

function endsOf({ nodes, beams, retained }: UnitFragment): WallEnds {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const at = (id: string): ModelNode[] => [byId.get(id)].filter((node) => node !== undefined);
  const posts = beams.filter(({ id }) => id.startsWith("post#") || id.startsWith("addedPost#"));
  return { bearings: retained.flatMap(at), posts: posts.flatMap(({ i }) => at(i)) };
}
