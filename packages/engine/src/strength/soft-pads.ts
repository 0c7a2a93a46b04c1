import type { PlacedPad } from "../geometry/building.ts";
import type { FreedomName, ModelCase, ModelLink, ModelNode, ModelSupport, Six } from "../model/analytical-model.ts";
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
  const stiffness = groundBySupport(bearings, padById);
  const soft = model.supports.flatMap((support) => {
    const ground = stiffness.get(support.node);
    return ground === undefined ? [] : [{ support, ground }];
  });
  const places = nodePlaces(model);
  const below = soft.map(({ support: { node } }): ModelNode => {
    return { ...(places.get(node) ?? missing(node)), id: groundOf(node) };
  });
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
        ...soft.map(({ support: { node } }): ModelSupport => ({ node: groundOf(node), fix: ALL })),
      ],
      links: [...model.links, ...soft.map(({ support, ground }) => bearingOn(support, ground))],
    },
  };
}

const ALL = ["ux", "uy", "uz", "rx", "ry", "rz"] as const;
const groundOf = (node: string): string => `${node} ground`;

/** The ground under a support: upright, N/mm, and about any axis of its pad, N·mm. */
type SoftGround = { readonly upright: number; readonly turning: number };

/** What keeps a post's foot from turning, or a beam from rolling, is the ground under its pad. */
function bearingOn({ node, fix, compression_only = false }: ModelSupport, { upright, turning }: SoftGround): ModelLink {
  const turns = (freedom: FreedomName): number => (fix.includes(freedom) ? turning : 0);
  const k: Six = [0, 0, upright, turns("rx"), turns("ry"), turns("rz")];
  return { id: node, i: groundOf(node), j: node, k, compression_only };
}

/**
 * By node: the ground under the pad it stands on; several on one pad share it. A rectangle on springs of equal stiffness turns
 * about its axis by their sum times b²/12; the shorter side stands for all axes.
 */
function groundBySupport(
  bearings: readonly ModelledBearing[],
  padById: ReadonlyMap<string, PlacedPad>,
): ReadonlyMap<string, SoftGround> {
  const onPads = bearings.flatMap(({ name, planned: { below } }) => {
    const placed = "ground" in below ? padById.get(below.ground) : undefined;
    return placed === undefined ? [] : [{ name, placed }];
  });
  return new Map(
    onPads.map(({ name, placed }) => {
      const sharing = onPads.filter((other) => other.placed === placed).length;
      const [lengthMm, widthMm] = [placed.pad.lengthUm / 1000, placed.pad.widthUm / 1000];
      const upright = (SUBGRADE * lengthMm * widthMm) / sharing;
      const least = Math.min(lengthMm, widthMm);
      return [name, { upright, turning: (upright * least * least) / 12 }];
    }),
  );
}

function movedBelow(load: ModelCase, soft: ReadonlyMap<string, unknown>): ModelCase {
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
