import type { Opening, Scheme } from "@cornerway/schema";
import type { Unit } from "../geometry/building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import type { BuiltModel } from "../model/build-model.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { ModelledUnit } from "../model/modelled-unit.ts";
import { momentNodes, withMomentNodes } from "../model/moment-nodes.ts";
import { softRacking } from "../strength/assumption-sets.ts";
import type { ElementResult } from "../strength/element-result.ts";
import { screen, type PartWorst } from "../strength/screen.ts";
import { partsMadeWith } from "../strength/parts-made.ts";
import type { StrengthPart } from "../strength/strength-part.ts";
import { statedResult } from "../strength/stated-result.ts";
import { leansOf, swayFactor, type Lean } from "../strength/sway.ts";
import { enlarged } from "../strength/sway-runs.ts";
import { solveTried, type TriedBuilding, type TriedRuns } from "./solve-tried.ts";
import type { HeldRuns } from "./surroundings.ts";
import { analysisWith, swaying, type TrialGround, type TrialSet } from "./trial-ground.ts";
import { triedParts } from "./tried-parts.ts";
import { unitActions, type UnitActions } from "./unit-actions.ts";

/** The building with the unit's openings as tried: what governs each part that hangs on them, and how the unit leans. */
export type Trial = {
  readonly worsts: readonly PartWorst[];
  readonly leans: readonly ElementResult[];
  readonly solved: readonly TriedRuns[];
};

/** The unit's parts and bearings under the governing runs of these sets, the unit alone condensed anew. */
export const trial = (ground: TrialGround, openings: readonly Opening[], sets: readonly TrialSet[]): Trial =>
  new TrialOf(ground, openings, sets, { besides: [], leans: "looked at" }).under(sets);

/** What is looked at beside the unit. */
export type Looking = {
  /** Units whose insides are checked as well. */
  readonly besides: readonly string[];
  /** Whether the building's lean is found with the openings, or taken as it was with the opening in its first place and not told. */
  readonly leans: "looked at" | "as in its first place";
};

/**
 * One container with other openings. Condenses it alone, solves the governing runs of one set of assumptions after another anew on
 * the whole building, and checks the unit's parts and bearings.
 */
export class TrialOf {
  private readonly ground: TrialGround;
  private readonly tried: Tried;
  private readonly leans: readonly Lean[] | undefined;
  private readonly times: ReturnType<typeof swayFactor>;
  private readonly seen = new Map<TrialSet, TriedRuns>();
  private parts: readonly StrengthPart[] | undefined;
  private screened: readonly TrialSet[] = [];
  private worsts: readonly PartWorst[] = [];

  /** `sets`: all that may be asked for. */
  constructor(
    ground: TrialGround,
    openings: readonly Opening[],
    sets: readonly TrialSet[],
    { besides, leans }: Looking,
  ) {
    this.ground = ground;
    this.tried = triedUnit(ground, openings, casesUnder(ground, sets), besides);
    this.leans = leans === "looked at" ? leansWith(ground, this.tried, sets) : undefined;
    this.times = swayFactor(this.leans ?? ground.leans);
  }

  under(sets: readonly TrialSet[]): Trial {
    if (!this.screened.every((one) => sets.includes(one))) [this.screened, this.worsts] = [[], []];
    const solved = sets.map((one) => this.solvedUnder(one));
    sets.forEach((one, n) => {
      if (!this.screened.includes(one)) this.worsts = screen(this.parts ?? [], solved[n]?.solved ?? [], this.worsts);
    });
    this.screened = sets.slice();
    const own = (this.leans ?? []).filter(({ unitId }) => unitId === this.tried.unit.id);
    return { worsts: this.worsts, leans: own.map(leanResult), solved };
  }

  private solvedUnder(trialSet: TrialSet): TriedRuns {
    const known = this.seen.get(trialSet) ?? this.solve(trialSet);
    this.seen.set(trialSet, known);
    return known;
  }

  private solve(trialSet: TrialSet): TriedRuns {
    const { ground, tried, times } = this;
    const { built, building } = builtWith(ground, tried, trialSet);
    this.parts ??= triedParts(
      tried.analysis,
      asFirst(ground, built),
      { unit: tried.unit, besides: tried.besides },
      tried.scheme,
      ground.basis,
      partsMadeWith(ground.memory),
    );
    const groups = trialSet.groups.map((group): HeldRuns => ({
      ...group,
      runs: enlarged({ cases: ground.cases, runs: group.runs }, times).runs,
    }));
    return solveTried(building, groups, ground.insides, ground.memory);
  }
}

/** The units of a model among the bearings of the first set: what is checked is the same in all, and others tie where it bears. */
function asFirst({ sets: [first] }: TrialGround, { model: { units } }: BuiltModel): BuiltModel {
  if (first === undefined) throw new Error("there is a set of assumptions");
  return { ...first.built, model: { ...first.built.model, units } };
}

type Tried = {
  readonly unit: Unit;
  readonly besides: readonly string[];
  readonly scheme: Scheme;
  readonly analysis: Analysis;
  readonly actions: UnitActions;
  /** The building under each set of assumptions. */
  readonly under: Map<TrialSet, BuiltTrial>;
  /** The loads are the same under every set of assumptions. */
  loads?: PlacedUnit;
};

type BuiltTrial = { readonly built: BuiltModel; readonly building: TriedBuilding };

function triedUnit(
  ground: TrialGround,
  openings: readonly Opening[],
  cases: readonly ActionCase[],
  besides: readonly string[],
): Tried {
  const unit: Unit = { ...ground.unit, openings };
  const scheme: Scheme = { ...ground.scheme, openings: [...ground.otherOpenings, ...openings] };
  const analysis = analysisWith(ground.analysis, unit);
  const [first] = ground.sets;
  if (first === undefined) throw new Error("there is a set of assumptions");
  const { building } = analysis.structure;
  return {
    unit,
    besides,
    scheme,
    analysis,
    actions: unitActions(cases, scheme, unit.id, building, first.built.plan),
    under: new Map(),
  };
}

function builtWith(ground: TrialGround, tried: Tried, trialSet: TrialSet): BuiltTrial {
  const known = tried.under.get(trialSet);
  if (known !== undefined) return known;
  const { built, set } = trialSet;
  const { unit, analysis, actions, besides } = tried;
  const modelled = new ModelledUnit(analysis, built.plan, unit, set.assumptions);
  const placed = withMomentNodes(modelled.placed(actions, tried.loads), momentNodes(built.model));
  tried.loads ??= placed;
  const units = built.model.units.map((one) => (one.id === unit.id ? placed : one));
  const model = { ...built.model, units };
  const made = {
    built: { ...built, model },
    building: {
      unit: placed,
      besides: units.filter(({ id }) => besides.includes(id)),
      bearings: ground.bearings,
      set,
      solver: trialSet.around.with(placed),
    },
  };
  tried.under.set(trialSet, made);
  return made;
}

/** Those that act in a run of these sets, and in those that tell how the building leans. */
function casesUnder({ cases, sway }: TrialGround, sets: readonly TrialSet[]): ActionCase[] {
  const runs = sets.flatMap(({ groups }) => groups.flatMap((group) => group.runs));
  const acting = new Set([...runs, ...swaying(sway)].flatMap(({ factors }) => Object.keys(factors)));
  return cases.filter(({ id }) => acting.has(id));
}

/** How units lean with the opening, where walls at their softest are among the sets. */
function leansWith(ground: TrialGround, tried: Tried, sets: readonly TrialSet[]): readonly Lean[] | undefined {
  const { sway, bearings, basis } = ground;
  const soft = sets.find(({ set }) => set.id === softRacking.id);
  if (sway === undefined || soft === undefined) return undefined;
  const { built, building } = builtWith(ground, tried, soft);
  const groups: HeldRuns[] = [{ held: [], runs: swaying(sway), ground: "still" }];
  const { solved } = solveTried({ ...building, besides: [] }, groups, ground.insides, ground.memory);
  const [upright, ...pushed] = solved;
  if (upright?.run.id !== sway.upright.id) return [];
  return leansOf(built.model.units, bearings, upright, pushed, basis.factored);
}

const leanResult = ({ unitId, run, check }: Lean): ElementResult =>
  statedResult({ ownerId: unitId, place: "lean under what stands on it", run, assumptions: softRacking.id }, check);
