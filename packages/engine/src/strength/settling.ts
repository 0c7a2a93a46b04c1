import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import type { BuildingModel } from "../model/building-model.ts";
import { buildModel, type BuiltModel } from "../model/build-model.ts";
import { asIfLocked, type HoldCandidate } from "../model/plan-holds.ts";
import type { AssumptionSet } from "./assumption-sets.ts";
import { isShaken } from "./holds-needed.ts";
import { modelledBearings, type ModelledBearing } from "./modelled-bearings.ts";
import { onSoftPads } from "./soft-pads.ts";
import { insidesAtHand, solveBuilt, type SolvedSet, type StrengthMemory } from "./solve-runs.ts";
import type { StrengthRun } from "./run-plan.ts";

/**
 * Runs in which a support moves, apart from the others. Ground that goes down or was built low pulls nothing: what stands over
 * it loses its bearing, whatever holds it down there against wind. A hold-down that had to pull its pad's ground after it
 * would twist a container as no ground can. Nor do pads push against each other: what a box that twists moves them apart, a few
 * millimetres, goes into anchor holes (8 mm wider than a rod of 3/4 in; AISC Manual Table 14-2, from memory) and into the
 * ground, so the ground holds with play.
 */
export function solveSettling(
  analysis: Analysis,
  cases: readonly ActionCase[],
  runs: readonly StrengthRun[],
  set: AssumptionSet,
  memory: StrengthMemory,
  sameLoads?: BuildingModel,
): SolvedSet {
  const used = new Set(runs.flatMap(({ factors }) => Object.keys(factors)));
  const acting = cases.filter(({ id }) => used.has(id));
  const { building } = analysis.structure;
  const onRigid = withUnitsOf(buildModel(analysis, acting, {}, set.assumptions, sameLoads), sameLoads);
  insidesAtHand(onRigid.model, memory);
  const bearings = modelledBearings(onRigid, building);
  const built = set.pads === "soft" ? onSoftPads(onRigid, bearings, building.padById) : onRigid;
  const isMoved = movesGround(acting);
  // where no support pulls and none is tied, it makes no difference
  if (set.assumptions.holds !== "tied" && built.model.supports.every((support) => support.compression_only === true)) {
    const all = solveBuilt(built, bearings, runs, set, memory);
    const inOrder = [
      ...all.refused.filter(({ run }) => !isMoved(run)),
      ...all.refused.filter(({ run }) => isMoved(run)),
    ];
    return { ...all, refused: inOrder };
  }
  const groundOf = groundsOf(acting, built.model);
  const solvedOn = grounds.flatMap((ground) => {
    const on = runs.filter((run) => groundOf(run) === ground);
    if (on.length === 0) return [];
    return [solveBuilt({ ...built, model: onGround(ground, built.model, bearings) }, bearings, on, set, memory)];
  });
  const solved = new Map(solvedOn.flatMap((one) => one.solved.map((run) => [run.run.id, run])));
  return {
    set,
    built,
    solved: runs.flatMap(({ id }) => solved.get(id) ?? []),
    refused: solvedOn.flatMap(({ refused }) => refused),
  };
}

/** What the bearings do in a run: their ground may move, and what bears plainly may hold more than friction. */
export type Ground = (typeof grounds)[number];

const grounds = ["still", "still, as if locked", "moving", "moving, as if locked"] as const;

/**
 * Tells what the bearings do in each run. Friction counts for nothing in earthquakes: plain bearings then hold as the locks would
 * that have to be drawn there. They do so at allowable level as well, where what level loads do to walls is told by what they add
 * to gravity loads: with friction used up by one of the two it would tell nothing.
 */
export function groundsOf(cases: readonly ActionCase[], { holds }: BuildingModel): (run: StrengthRun) => Ground {
  const isMoved = movesGround(cases);
  const rubs = holds?.friction !== undefined && holds.candidates.some(({ plain }) => plain === true);
  return (run) => {
    const locked = rubs && (run.level !== "strength" || isShaken(run));
    if (isMoved(run)) return locked ? "moving, as if locked" : "moving";
    return locked ? "still, as if locked" : "still";
  };
}

/** The model as its bearings are in such runs. */
export function onGround(ground: Ground, model: BuildingModel, bearings: readonly ModelledBearing[]): BuildingModel {
  const moves = ground === "moving" || ground === "moving, as if locked";
  const moved = moves ? onMovingGround(model, bearings) : model;
  if (moved.holds === undefined || ground === "still" || ground === "moving") return moved;
  return { ...moved, holds: asIfLocked(moved.holds) };
}

/**
 * Containers of the same lines and stiffness there are taken as they are, with all their loads: they may be ready. They are told
 * by their key: whether they are the same objects hangs on what is still at hand, and would change the last digits.
 */
function withUnitsOf(built: BuiltModel, other: BuildingModel | undefined): BuiltModel {
  if (other === undefined) return built;
  const ready = new Map(other.units.map((unit) => [unit.id, unit]));
  const units = built.model.units.map((unit) => {
    const known = ready.get(unit.id);
    return known?.fragment.key === unit.fragment.key ? known : unit;
  });
  return { ...built, model: { ...built.model, units } };
}

/** Tells the runs in which a support moves. */
export function movesGround(cases: readonly ActionCase[]): (run: StrengthRun) => boolean {
  const moving = new Set(cases.filter(({ symbol }) => symbol === "T").map(({ id }) => id));
  return ({ factors }) => Object.keys(factors).some((id) => moving.has(id));
}

/** Every bearing on the ground presses only, and holds with play. */
function onMovingGround(model: BuildingModel, bearings: readonly ModelledBearing[]): BuildingModel {
  const grounded = new Set(bearings.filter(({ planned }) => "ground" in planned.below).map(({ name }) => name));
  const press = <T extends object>(one: T, name: string): T =>
    grounded.has(name) ? { ...one, compression_only: true } : one;
  const play = (candidate: HoldCandidate): HoldCandidate =>
    grounded.has(candidate.bearing) ? { ...candidate, atPlay: true } : candidate;
  return {
    ...model,
    supports: model.supports.map((support) => press(support, support.node)),
    links: model.links.map((link) => press(link, link.id)),
    ...(model.holds && { holds: { ...model.holds, candidates: model.holds.candidates.map(play) } }),
  };
}
