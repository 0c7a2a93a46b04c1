import type { Element } from "../elements/element.ts";
import type { AnalyticalModel, ModelNode } from "../model/analytical-model.ts";
import { bearingsThatLoseHold } from "./bearings.ts";
import { nodeName, type BuildingModel, type PlacedUnit } from "../model/building-model.ts";
import { momentNodes } from "../model/moment-nodes.ts";
import { frameSystem, type FrameSystem } from "./frame-system.ts";
import { turned, turnOf, type Turn } from "../model/turn.ts";
import type { CondensationCache } from "./condensation-cache.ts";
import type { Condensed } from "./condense.ts";
import { plannedHolds } from "./planned-holds.ts";
import { turnStiffness } from "./turn-stiffness.ts";
import type { UnitElements } from "./unit-elements.ts";
import type { LocalUnitLoads } from "./unit-loads.ts";

/** A container as the building sees it: a stiffness on freedoms of its retained nodes, which are numbered in a row from `firstNode`. */
export interface CondensedUnit {
  readonly unit: PlacedUnit;
  readonly turn: Turn;
  readonly firstNode: number;
  readonly condensed: Condensed<UnitElements>;
  readonly loads: LocalUnitLoads;
}

export interface BuildingSystem {
  /** What lies between the containers as a line model on their retained nodes, and the same as elements. */
  readonly skeleton: AnalyticalModel;
  readonly frame: FrameSystem;
  readonly units: readonly CondensedUnit[];
  readonly unitById: ReadonlyMap<string, CondensedUnit>;
}

export type BuildingAssembly =
  | { readonly stable: true; readonly building: BuildingSystem }
  /** A container in which something moves (6 per node) though all its bearings hold. */
  | { readonly stable: false; readonly nodeIds: readonly string[]; readonly movements: readonly Float64Array[] };

/** Condenses the containers and their loads through the cache and joins them by what lies between. */
export function buildingSystem(model: BuildingModel, cache: CondensationCache): BuildingAssembly {
  const units: CondensedUnit[] = [];
  let firstNode = 0;
  for (const unit of model.units) {
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) {
      const nodeIds = unit.fragment.nodes.map(({ id }) => nodeName(unit.id, id));
      return { stable: false, nodeIds, movements: condensation.movements };
    }
    const { condensed } = condensation;
    // at once, while its elements are at hand
    const loads = cache.loadsOn(unit, condensed);
    units.push({ unit, turn: turnOf(unit.turnMdeg), firstNode, condensed, loads });
    firstNode += condensed.retained.length;
  }
  return { stable: true, building: joined(model, units) };
}

function joined(model: BuildingModel, units: readonly CondensedUnit[]): BuildingSystem {
  const turned = momentNodes(model);
  for (const { unit } of units) checkMoments(unit, turned);
  const { between, springs, links, supports, combos } = model;
  const skeleton: AnalyticalModel = {
    nodes: [...units.flatMap(retainedNodes), ...between.nodes],
    sections: between.sections,
    beams: between.beams,
    panels: [],
    springs,
    links,
    supports,
    cases: between.loads,
    combos,
  };
  const bare = frameSystem(skeleton, bearingsThatLoseHold);
  const elements = [...bare.system.elements, ...turnedElements(units)];
  const sheetOnly = new Uint8Array(skeleton.nodes.length); // retained nodes carry members inside the containers
  const holds = model.holds && { plannedHolds: plannedHolds(model.holds, skeleton, bare) };
  return {
    skeleton,
    frame: {
      ...bare,
      system: { ...bare.system, elements, held: heldBetween(bare.system.held, units), sheetOnly, ...holds },
    },
    units,
    unitById: new Map(units.map((one) => [one.unit.id, one])),
  };
}

/** Between the containers a rotation that nothing outside turns is no freedom at all. */
function heldBetween(held: Uint8Array, units: readonly CondensedUnit[]): Uint8Array {
  const all = held.slice();
  for (const { firstNode, condensed } of units) {
    const own = all.subarray(firstNode * 6, (firstNode + condensed.retained.length) * 6);
    own.fill(1);
    for (const freedom of condensed.freedoms) own[freedom] = held[firstNode * 6 + freedom] ?? 0;
  }
  return all;
}

/** What turns a container, or keeps it from turning, where it is not joined so would be lost. */
function checkMoments(
  { id, fragment: { retained, momentNodes: known = [] } }: PlacedUnit,
  turned: ReadonlySet<string>,
): void {
  if (turned.size === 0) return;
  const lost = retained.find((node) => turned.has(nodeName(id, node)) && !known.includes(node));
  if (lost !== undefined)
    throw new Error(`a moment acts on "${nodeName(id, lost)}", which is joined without its rotations`);
}

function retainedNodes({ unit, turn, condensed }: CondensedUnit): ModelNode[] {
  return condensed.retained.flatMap((n) => {
    const node = unit.fragment.nodes[n];
    if (node === undefined) return [];
    const [x, y, z] = turned(turn, [node.x, node.y, node.z]);
    return [{ id: nodeName(unit.id, node.id), x: x + unit.at[0], y: y + unit.at[1], z: z + unit.at[2] }];
  });
}

/** One element per container; equal containers turned alike share one matrix. */
function turnedElements(units: readonly CondensedUnit[]): Element[] {
  const matrices = new Map<Float64Array, Map<number, Float64Array>>();
  return units.map(({ unit, turn, firstNode, condensed }) => {
    const { stiffness } = condensed;
    const byTurn = matrices.get(stiffness) ?? new Map<number, Float64Array>();
    matrices.set(stiffness, byTurn);
    const matrix = byTurn.get(unit.turnMdeg) ?? turnStiffness(stiffness, turn);
    byTurn.set(unit.turnMdeg, matrix);
    return { freedoms: condensed.freedoms.map((freedom) => firstNode * 6 + freedom), matrix };
  });
}
