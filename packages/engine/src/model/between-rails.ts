import type { ModelNode, Six, Triple } from "./analytical-model.ts";
import type { BuiltUnit } from "./unit-fragment.ts";

/** A force on the floor or roof of a container, N down, at a place in the container's own axes, mm. */
export type ForceBetweenRails = {
  readonly surface: "floor" | "roof";
  readonly xMm: number;
  readonly yMm: number;
  readonly downN: number;
};

type Loads = { readonly nodal: { node: string; F: Six }[]; readonly beam_udl: { beam: string; q: Triple }[] };

/**
 * What lies between the side rails comes down on both of them by its lever and twists neither: boards and sheet rest on the
 * rails and hold no torsion. On a floor the nearest cross member is bent as by the force at its middle, P L/4, which no place
 * along it exceeds: twice the force evenly along it, half of it taken back at its ends.
 */
export function betweenRails(built: BuiltUnit): (force: ForceBetweenRails) => Loads {
  const { fragment, carriers, halfWidthMm } = built;
  const known = new Map<string, ModelNode[]>();
  return ({ surface, xMm, yMm, downN }) => {
    const nodal = ([1, -1] as const).map((side): Loads["nodal"][number] => {
      const key = `${surface} ${side}`;
      const nodes = known.get(key) ?? railNodes(built, surface, side);
      known.set(key, nodes);
      const node = nearest(nodes, xMm);
      const forceN = downN * (0.5 + (side * yMm) / (2 * halfWidthMm));
      return { node: node.id, F: [0, 0, -forceN, 0, (xMm - node.x) * forceN, 0] };
    });
    if (surface === "roof") return { nodal, beam_udl: [] };
    const bent = nearest(
      carriers.filter(({ face }) => face === "floor"),
      xMm,
    );
    const beam = fragment.beams.find(({ id }) => id === bent.beam);
    if (beam === undefined) throw new RangeError(`no cross member ${bent.beam}`);
    const back = [beam.i, beam.j].map((node): Loads["nodal"][number] => ({ node, F: [0, 0, downN, 0, 0, 0] }));
    return { nodal: [...nodal, ...back], beam_udl: [{ beam: bent.beam, q: [0, 0, (-2 * downN) / bent.lengthMm] }] };
  };
}

/** Nodes of a side's rail, and of its corners where the rail is cut away. */
function railNodes({ fragment, corners }: BuiltUnit, surface: "floor" | "roof", side: 1 | -1): ModelNode[] {
  const [rail, level] = surface === "floor" ? (["bottomRail#", "foot"] as const) : (["topRail#", "head"] as const);
  const ends = fragment.beams.filter(({ id }) => id.startsWith(rail)).flatMap(({ i, j }) => [i, j]);
  const name = side > 0 ? "left" : "right";
  const wanted = new Set([...ends, corners("front", name, level), corners("door", name, level)]);
  return fragment.nodes.filter(({ id, y }) => wanted.has(id) && y * side > 0);
}

function nearest<At extends { readonly x: number }>(places: readonly At[], xMm: number): At {
  const [first, ...others] = places;
  if (first === undefined) throw new RangeError("a container has rails and cross members");
  return others.reduce((best, next) => (Math.abs(next.x - xMm) < Math.abs(best.x - xMm) ? next : best), first);
}
