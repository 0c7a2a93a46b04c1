import type { PlacedPad } from "../geometry/building.ts";
import type { ModelCase, ModelLink, ModelNode, ModelSupport } from "../model/analytical-model.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { nodeName, type BuildingModel, type PlacedUnit } from "../model/building-model.ts";
import { turned, turnOf } from "../model/turn.ts";
import type { ModelledBearing } from "./modelled-bearings.ts";

/** Soft ground under a pad, N/mm³: 10 MN/m³, loose sand or soft clay; common practice, no published source. */
const SUBGRADE = 0.01;

/**
 * The model on pads that give: each support on the ground becomes a bearing, by the same name, on a rigid support below it, as
 * stiff as the ground under its pad. Movements of pads are those of the ground. Bearings without a pad stay as they are.
 */
export function onSoftPads(
  built: BuiltModel,
  bearings: readonly ModelledBearing[],
  padById: ReadonlyMap<string, PlacedPad>,
): BuiltModel {
  const { model } = built;
  const stiffness = stiffnessBySupport(bearings, padById);
  const soft = model.supports.filter(({ node }) => stiffness.has(node));
  const places = nodePlaces(model);
  const below = soft.map(({ node }): ModelNode => ({ ...(places.get(node) ?? missing(node)), id: groundOf(node) }));
  return {
    ...built,
    model: {
      ...model,
      between: {
        ...model.between,
        nodes: [...model.between.nodes, ...below],
        loads: Object.fromEntries(
          Object.entries(model.between.loads).map(([id, load]) => [id, movedBelow(load, stiffness)]),
        ),
      },
      supports: [
        ...model.supports.filter(({ node }) => !stiffness.has(node)),
        ...soft.map(({ node }): ModelSupport => ({ node: groundOf(node), fix: ALL })),
      ],
      links: [...model.links, ...soft.map((support) => bearingOn(support, stiffness.get(support.node) ?? 0))],
    },
  };
}

const ALL = ["ux", "uy", "uz", "rx", "ry", "rz"] as const;
const groundOf = (node: string): string => `${node} ground`;

/** A post's foot keeps from turning about its own axis, as on a rigid pad. */
const TURN_NMM = 1e9;

function bearingOn({ node, fix, compression_only = false }: ModelSupport, k: number): ModelLink {
  const turns = fix.includes("rz") ? TURN_NMM : 0;
  return { id: node, i: groundOf(node), j: node, k: [0, 0, k, 0, 0, turns], compression_only };
}

/** By node: the ground under the pad it stands on, N/mm; several on one pad share it. */
function stiffnessBySupport(
  bearings: readonly ModelledBearing[],
  padById: ReadonlyMap<string, PlacedPad>,
): ReadonlyMap<string, number> {
  const onPads = bearings.flatMap(({ name, planned: { below } }) => {
    const placed = "ground" in below ? padById.get(below.ground) : undefined;
    return placed === undefined ? [] : [{ name, placed }];
  });
  return new Map(
    onPads.map(({ name, placed }) => {
      const sharing = onPads.filter((other) => other.placed === placed).length;
      return [name, (SUBGRADE * (placed.pad.lengthUm / 1000) * (placed.pad.widthUm / 1000)) / sharing];
    }),
  );
}

function movedBelow(load: ModelCase, soft: ReadonlyMap<string, number>): ModelCase {
  if (load.settle === undefined) return load;
  return {
    ...load,
    settle: load.settle.map((one) => (soft.has(one.node) ? { ...one, node: groundOf(one.node) } : one)),
  };
}

/** Every node that may stand on the ground, in global axes. */
function nodePlaces({ units, between }: BuildingModel): Map<string, ModelNode> {
  return new Map([...units.flatMap(retainedOf), ...between.nodes].map((node) => [node.id, node]));
}

function retainedOf({ id: unitId, fragment, turnMdeg, at }: PlacedUnit): ModelNode[] {
  const turn = turnOf(turnMdeg);
  return fragment.nodes
    .filter(({ id }) => fragment.retained.includes(id))
    .map(({ id, x, y, z }) => {
      const [gx, gy, gz] = turned(turn, [x, y, z]);
      return { id: nodeName(unitId, id), x: gx + at[0], y: gy + at[1], z: gz + at[2] };
    });
}

function missing(node: string): never {
  throw new RangeError(`the model has no node ${node}`);
}
