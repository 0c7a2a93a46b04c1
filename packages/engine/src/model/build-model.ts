import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import { bearingPlan, type BearingPlan } from "./bearing-plan.ts";
import type { BuildingModel, PlacedUnit } from "./building-model.ts";
import { drawBeams } from "./draw-beams.ts";
import { drawFreePosts } from "./draw-free-posts.ts";
import { drawTies } from "./draw-ties.ts";
import { holdCandidates } from "./hold-candidates.ts";
import { loadsOnUnits } from "./loads-on-units.ts";
import { loadsBetween } from "./loads-between.ts";
import { isTaken } from "./measured-steel.ts";
import { usualAssumptions, type ModelAssumptions } from "./model-assumptions.ts";
import { beyondBeam, linkOf, supportsOf, type BearingPlaces } from "./model-bearings.ts";
import { ModelledUnit } from "./modelled-unit.ts";
import { momentNodes, withMomentNodes } from "./moment-nodes.ts";
import { planHolds, type HoldPlan } from "./plan-holds.ts";
import { plannedTies } from "./tie-plan.ts";

/** What the model leaves out or takes another way than drawn. */
export type ModelNote =
  /** Fewer than two bearings: nothing keeps the container from turning in plan. */
  | { readonly kind: "no hold in plan"; readonly unitId: string }
  /** A hatch in roof or floor: the diaphragm is modelled whole. */
  | { readonly kind: "hatch not modelled"; readonly openingId: string }
  /** A beam that slopes, lies askew or holds up a rail from below: what stands on it stands as on the ground, the rail as without it. */
  | { readonly kind: "beam not modelled"; readonly elementId: string; readonly unitId: string }
  /** A tie that meets no fitting, post or rail of both its units: each moves by itself. */
  | { readonly kind: "tie not modelled"; readonly elementId: string; readonly unitId: string }
  /** What was found or proved of a member beyond a measured thickness of rails, headers, sills and cross members. */
  | { readonly kind: "finding not taken"; readonly elementId: string; readonly unitId: string };

export interface BuiltModel {
  readonly model: BuildingModel;
  readonly notes: readonly ModelNote[];
  /** Which container, or post, each support and link of the model belongs to, in the model's order. */
  readonly plan: BearingPlan;
}

/**
 * A scheme, through its analysis, as a line model of all its containers, with these actions and combinations. Loads are the
 * same whatever is assumed of stiffness: `sameLoads` is a model of this scheme under these or more actions to take them from.
 */
export function buildModel(
  analysis: Analysis,
  actions: readonly ActionCase[],
  combos: BuildingModel["combos"],
  assumptions: ModelAssumptions = usualAssumptions,
  sameLoads?: BuildingModel,
): BuiltModel {
  const plan = bearingPlan(analysis);
  const units = analysis.structure.building.units.map((unit) => new ModelledUnit(analysis, plan, unit, assumptions));
  const byId = new Map(units.map((one) => [one.unit.id, one]));
  const { building } = analysis.structure;
  const places: BearingPlaces = { unit: (unitId) => find(byId, unitId), building };
  const links = plan.bearings.flatMap((bearing, n) => linkOf(bearing, n, places, assumptions));
  const holds: HoldPlan = {
    kind: assumptions.holds,
    stiffness: assumptions.bearingStiffness,
    candidates: holdCandidates(plan.bearings, places, assumptions),
    ...(assumptions.holds === "tied" && { friction: building.friction }),
  };
  const { unheld } = planHolds(holds, new Set());
  const posts = drawFreePosts(building, plan, assumptions);
  const beams = drawBeams(plan, building, assumptions, (bearing, beam) => beyondBeam(bearing, beam, places));
  const ties = drawTies(plan.ties, (point) => find(byId, point.unitId).tiedNode(point), assumptions);
  const byContainer = actions.map((action) => [action.id, loadsOnUnits(action, plan)] as const);
  const joints = {
    between: { ...joined(posts, beams, ties), loads: loadsBetween(actions, plan, places) },
    springs: ties.springs,
    links,
    supports: supportsOf(plan.bearings, places),
  };
  const turned = momentNodes(joints);
  return {
    plan,
    notes: [
      ...unheld.map((unitId): ModelNote => ({ kind: "no hold in plan", unitId })),
      ...fabricNotes(analysis),
      ...steelNotes(analysis, plan),
    ],
    model: {
      units: units.map((one) => withMomentNodes(one.placed(byContainer, unitIn(one.unit.id, sameLoads)), turned)),
      ...joints,
      holds,
      combos,
    },
  };
}

type Lines = Pick<BuildingModel["between"], "nodes" | "beams" | "sections">;

const joined = (...parts: readonly Lines[]): Lines => ({
  nodes: parts.flatMap(({ nodes }) => nodes),
  beams: parts.flatMap(({ beams }) => beams),
  sections: Object.fromEntries(parts.flatMap(({ sections }) => Object.entries(sections))),
});

const unitIn = (unitId: string, model: BuildingModel | undefined): PlacedUnit | undefined =>
  model?.units.find(({ id }) => id === unitId);

function find(byId: ReadonlyMap<string, ModelledUnit>, id: string): ModelledUnit {
  const unit = byId.get(id);
  if (unit === undefined) throw new RangeError(`no container ${id} in this building`);
  return unit;
}

function fabricNotes({ structure }: Analysis): ModelNote[] {
  return structure.building.units.flatMap(({ openings }) =>
    openings.flatMap(({ id, face }): ModelNote[] =>
      face === "roof" || face === "floor" ? [{ kind: "hatch not modelled", openingId: id }] : [],
    ),
  );
}

/** What is drawn between units and under them, and is no part of the model yet. */
function steelNotes({ structure, bearings, railBeams }: Analysis, { beams }: BearingPlan): ModelNote[] {
  const { ties, overrides, units } = structure.building;
  // a finding on a post or beam concerns whoever stands on it: all of them, until it is taken
  const found = overrides.flatMap((override) => {
    if (isTaken(override)) return [];
    const { id, elementId } = override;
    const own = units.filter((unit) => unit.id === elementId);
    return (own.length > 0 ? own : units).map((unit): ModelNote => {
      return { kind: "finding not taken", elementId: id, unitId: unit.id };
    });
  });
  const onBeams = bearings.flatMap(({ unitId, contacts }) =>
    contacts.flatMap(({ target }): ModelNote[] =>
      target.on === "beam" && !beams.includes(target.elementId)
        ? [{ kind: "beam not modelled", elementId: target.elementId, unitId }]
        : [],
    ),
  );
  const underRails = railBeams.map(({ beam, unitId }): ModelNote => {
    return { kind: "beam not modelled", elementId: beam.id, unitId };
  });
  const joins = new Set(plannedTies(structure.building).map(({ tieId }) => tieId));
  const tied = ties
    .filter(({ id }) => !joins.has(id))
    .flatMap(({ id, aId, bId }) =>
      [aId, bId].map((unitId): ModelNote => ({ kind: "tie not modelled", elementId: id, unitId })),
    );
  return [...onBeams, ...underRails, ...tied, ...found];
}
