import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase, ActionLoad } from "../loads/action-case.ts";
import type { ModelBeam, ModelCase, ModelLink, ModelNode, ModelSection, ModelSupport } from "./analytical-model.ts";
import { bearingPlan, postAt, type BearingPlan, type PlannedBearing } from "./bearing-plan.ts";
import type { UnitPoint } from "./unit-point.ts";
import { nodeName, type BuildingModel, type PlacedUnit } from "./building-model.ts";
import { usualAssumptions, type ModelAssumptions } from "./model-assumptions.ts";
import { planHolds, type HoldCandidate, type HoldPlan } from "./plan-holds.ts";
import { drawTies } from "./draw-ties.ts";
import { plannedTies } from "./tie-plan.ts";
import { isTaken } from "./measured-steel.ts";
import { ModelledUnit } from "./modelled-unit.ts";
import { postSection } from "./unit-lines-of.ts";

/** What the model leaves out or takes another way than drawn. */
export type ModelNote =
  /** Fewer than two bearings: nothing keeps the container from turning in plan. */
  | { readonly kind: "no hold in plan"; readonly unitId: string }
  /** A hatch in roof or floor: the diaphragm is modelled whole. */
  | { readonly kind: "hatch not modelled"; readonly openingId: string }
  /** A beam under a unit or post: what stands on it stands as on the ground. */
  | { readonly kind: "beam not modelled"; readonly elementId: string; readonly unitId: string }
  /** A tie that meets no fitting, post or rail of both its units: each moves by itself. */
  | { readonly kind: "tie not modelled"; readonly elementId: string; readonly unitId: string }
  /** What was found or proved of a member beyond a measured thickness of rails, headers, sills and cross members. */
  | { readonly kind: "finding not taken"; readonly elementId: string; readonly unitId: string }
  /** A bare sheet edge: the layered sheet is up to 7 % too stiff there; a jamb is asked for. */
  | { readonly kind: "unframed edge"; readonly openingId: string };

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
  const links = plan.bearings.flatMap((bearing, n) => linkOf(bearing, n, byId, assumptions));
  const holds: HoldPlan = {
    kind: assumptions.holds,
    stiffness: assumptions.bearingStiffness,
    candidates: holdCandidates(plan.bearings, byId, analysis, assumptions),
  };
  const { unheld } = planHolds(holds, new Set());
  const posts = freePosts(analysis, plan, assumptions);
  const ties = drawTies(plan.ties, (point) => find(byId, point.unitId).tiedNode(point), assumptions);
  const byContainer = actions.map((action) => [action.id, loadsByContainer(action, plan)] as const);
  return {
    plan,
    notes: [
      ...unheld.map((unitId): ModelNote => ({ kind: "no hold in plan", unitId })),
      ...fabricNotes(analysis),
      ...steelNotes(analysis),
    ],
    model: {
      units: units.map((one) => one.placed(byContainer, unitIn(one.unit.id, sameLoads))),
      between: { ...joined(posts, ties), loads: loadsBetween(actions, plan, byId) },
      springs: ties.springs,
      links,
      supports: supportsOf(plan.bearings, byId),
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

/** A post in the wall of a container is part of it, and so is what acts on it. */
function loadsByContainer({ loads }: ActionCase, { inWalls }: BearingPlan): Map<string, ActionLoad[]> {
  const unitOfPost = new Map([...inWalls].flatMap(([unitId, posts]) => posts.map(({ postId }) => [postId, unitId])));
  const found = new Map<string, ActionLoad[]>();
  for (const load of loads) {
    const element = "containerId" in load ? load.containerId : load.elementId;
    const id = unitOfPost.get(element) ?? element;
    const list = found.get(id);
    if (list === undefined) found.set(id, [load]);
    else list.push(load);
  }
  return found;
}

function find(byId: ReadonlyMap<string, ModelledUnit>, id: string): ModelledUnit {
  const unit = byId.get(id);
  if (unit === undefined) throw new RangeError(`no container ${id} in this building`);
  return unit;
}

/** Every bearing once (two posts on one pad, or a seat found twice, share a support). */
function holdCandidates(
  bearings: readonly PlannedBearing[],
  byId: ReadonlyMap<string, ModelledUnit>,
  { structure }: Analysis,
  assumptions: ModelAssumptions,
): HoldCandidate[] {
  const found = new Map<string, HoldCandidate>();
  const locked = lockedUnits(bearings);
  bearings.forEach((planned, n) => {
    const { above, below, heldById } = planned;
    // a post pinned at both ends holds nothing in plan: its head goes with what it bears, whatever else holds that
    const onPost = "post" in below;
    if ("unitId" in above && locked.has(above.unitId) && heldById === undefined && !onPost) return;
    const [link] = linkOf(planned, n, byId, assumptions);
    const bearing = link?.id ?? nameOf(above, "foot", byId);
    const post = "post" in above ? structure.building.postById.get(above.post) : undefined;
    const [xMm, yMm] = "post" in above ? [post?.xMm ?? NaN, post?.yMm ?? NaN] : find(byId, above.unitId).at(above);
    if (!found.has(bearing))
      found.set(bearing, {
        bearing,
        of: "post" in above || onPost ? null : above.unitId,
        onCorner: "corner" in above,
        xMm,
        yMm,
      });
  });
  return [...found.values()];
}

/** Units with two bearings or more that hold in plan: these alone do it, the others only bear. */
function lockedUnits(bearings: readonly PlannedBearing[]): Set<string> {
  const count = new Map<string, number>();
  for (const { above, below, heldById } of bearings)
    if ("unitId" in above && heldById !== undefined && !("post" in below))
      count.set(above.unitId, (count.get(above.unitId) ?? 0) + 1);
  return new Set([...count].flatMap(([id, held]) => (held >= 2 ? [id] : [])));
}

function nameOf(
  point: UnitPoint | { readonly post: string },
  end: "foot" | "head",
  byId: ReadonlyMap<string, ModelledUnit>,
): string {
  return "post" in point ? nodeName(point.post, end) : find(byId, point.unitId).node(point);
}

function linkOf(
  { above, below, heldById }: PlannedBearing,
  index: number,
  byId: ReadonlyMap<string, ModelledUnit>,
  { bearingStiffness: k }: ModelAssumptions,
): ModelLink[] {
  if ("ground" in below) return [];
  const i = "post" in below ? nodeName(below.post, "head") : nameOf(below.point, "head", byId);
  const j = nameOf(above, "foot", byId);
  return [{ id: `${j}>${i}#${index + 1}`, i, j, k: [0, 0, k, 0, 0, 0], compression_only: heldById === undefined }];
}

function supportsOf(bearings: readonly PlannedBearing[], byId: ReadonlyMap<string, ModelledUnit>): ModelSupport[] {
  const supports = new Map<string, ModelSupport>();
  for (const { above, below, heldById } of bearings) {
    if (!("ground" in below)) continue;
    const node = nameOf(above, "foot", byId);
    const fix: ModelSupport["fix"] = "post" in above ? ["uz", "rz"] : ["uz"];
    const known = supports.get(node);
    const pulls = heldById !== undefined || known?.compression_only === false;
    supports.set(node, { node, fix, compression_only: !pulls });
  }
  return [...supports.values()];
}

/** Posts that stand by themselves, as members between the containers. */
function freePosts({ structure }: Analysis, { freePosts: ids }: BearingPlan, assumptions: ModelAssumptions) {
  const nodes: ModelNode[] = [];
  const beams: ModelBeam[] = [];
  const sections: Record<string, ModelSection> = {};
  for (const id of ids) {
    const post = structure.building.postById.get(id);
    if (post === undefined) continue;
    const { xMm: x, yMm: y } = post;
    nodes.push(
      { id: nodeName(id, "foot"), x, y, z: post.footZMm },
      { id: nodeName(id, "head"), x, y, z: post.headZMm },
    );
    sections[post.post.section] = postSection(post.post.section, assumptions);
    beams.push({
      id: nodeName(id, "post"),
      i: nodeName(id, "foot"),
      j: nodeName(id, "head"),
      section: post.post.section,
    });
  }
  return { nodes, beams, sections };
}

/**
 * Movements of pads and of posts on them, down positive in the action, at every support that stands so; forces on posts by themselves,
 * at their heads.
 */
function loadsBetween(
  actions: readonly ActionCase[],
  { bearings, freePosts: posts, inWalls }: BearingPlan,
  byId: ReadonlyMap<string, ModelledUnit>,
): Record<string, ModelCase> {
  const cases = actions.map(({ id, loads }): [string, ModelCase] => {
    const settle = loads.flatMap((load) => {
      if (load.kind !== "movement") return [];
      const on = bearings.filter(
        ({ above, below }) =>
          "ground" in below && (below.ground === load.elementId || postAt(above, inWalls) === load.elementId),
      );
      return on.map(({ above }) => ({ node: nameOf(above, "foot", byId), dof: "uz" as const, value: -load.downMm }));
    });
    const nodal = loads.flatMap((load): NonNullable<ModelCase["nodal"]>[number][] =>
      load.kind === "point" && posts.includes(load.elementId)
        ? [{ node: nodeName(load.elementId, "head"), F: [load.xN, load.yN, load.zN, 0, 0, 0] }]
        : [],
    );
    return [id, { ...(settle.length > 0 && { settle }), ...(nodal.length > 0 && { nodal }) }];
  });
  return Object.fromEntries(cases);
}

function fabricNotes({ structure }: Analysis): ModelNote[] {
  return structure.building.units.flatMap(({ openings }) =>
    openings.flatMap(({ id, face, framed, use }): ModelNote[] => {
      if (face === "roof" || face === "floor") return [{ kind: "hatch not modelled", openingId: id }];
      return !framed && use !== "open-wall" && face !== "door" ? [{ kind: "unframed edge", openingId: id }] : [];
    }),
  );
}

/** What is drawn between units and under them, and is no part of the model yet. */
function steelNotes({ structure, bearings }: Analysis): ModelNote[] {
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
      target.on === "beam" ? [{ kind: "beam not modelled", elementId: target.elementId, unitId }] : [],
    ),
  );
  const joins = new Set(plannedTies(structure.building).map(({ tieId }) => tieId));
  const tied = ties
    .filter(({ id }) => !joins.has(id))
    .flatMap(({ id, aId, bId }) =>
      [aId, bId].map((unitId): ModelNote => ({ kind: "tie not modelled", elementId: id, unitId })),
    );
  return [...onBeams, ...tied, ...found];
}
