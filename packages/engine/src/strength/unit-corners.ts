import { nodeName, type PlacedUnit } from "../model/building-model.ts";

/** A corner of a container in the solution: the nodes of its bottom and of its top fitting. */
export type UnitCorner = { readonly foot: string; readonly head: string; readonly heightMm: number };

/** The four corners of a container by the names its fittings have in the solution. */
export function unitCorners({ id, fragment: { nodes, retained } }: PlacedUnit): UnitCorner[] {
  const kept = nodes.filter((node) => retained.includes(node.id));
  const half = { x: Math.max(...kept.map(({ x }) => x)), y: Math.max(...kept.map(({ y }) => y)) };
  return [-1, 1].flatMap((along) =>
    [-1, 1].map((across): UnitCorner => {
      const own = kept
        .filter(({ x, y }) => near(x, along * half.x) && near(y, across * half.y))
        .toSorted((a, b) => a.z - b.z);
      const [low, high] = [own[0], own.at(-1)];
      if (low === undefined || high === undefined || low === high)
        throw new RangeError(`container ${id} has a corner without its fittings`);
      return { foot: nodeName(id, low.id), head: nodeName(id, high.id), heightMm: high.z - low.z };
    }),
  );
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1;
