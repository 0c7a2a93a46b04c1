import type { PointMm } from "@cornerway/schema";
import type { BuildingModel, PlacedUnit } from "../model/building-model.ts";
import { turned, turnOf } from "../model/turn.ts";
import { rounded } from "../units.ts";
import type { FlowNode } from "./vertical-flow.ts";

/** From the axes of a container to the site. */
export function inSite({ turnMdeg, at }: Pick<PlacedUnit, "turnMdeg" | "at">): (place: FlowNode) => PointMm {
  const turn = turnOf(turnMdeg);
  return ({ x, y, z }) => {
    const [east, north, up] = turned(turn, [x, y, z]);
    return { xMm: rounded(east + at[0]), yMm: rounded(north + at[1]), zMm: rounded(up + at[2]) };
  };
}

/** Where the nodes of a building lie, by the names they have in it. */
export function placesOf({ units, between }: BuildingModel): (node: string) => PointMm {
  const known = new Map<string, PointMm>(
    units.flatMap((unit) => {
      const place = inSite(unit);
      const kept = new Set(unit.fragment.retained);
      return unit.fragment.nodes
        .filter(({ id }) => kept.has(id))
        .map((node): [string, PointMm] => [`${unit.id}:${node.id}`, place(node)]);
    }),
  );
  for (const { id, x, y, z } of between.nodes) known.set(id, { xMm: x, yMm: y, zMm: z });
  return (node) => {
    const place = known.get(node);
    if (place === undefined) throw new RangeError(`the building has no point ${node}`);
    return place;
  };
}
