import type { CondensationCache } from "../analysis/condensation-cache.ts";
import type { FrameRefusal } from "../analysis/frame-result.ts";
import type { ContactState } from "../analysis/system.ts";
import { buildingSolver, type BuildingSolver } from "../building.ts";
import type { BuildingModel, PlacedUnit } from "../model/building-model.ts";
import type { ModelledBearing } from "../strength/modelled-bearings.ts";
import type { StrengthRun } from "../strength/run-plan.ts";
import { onGround, type Ground } from "../strength/settling.ts";
import { RestOfBuilding, stateKey, type TriedCombination } from "./rest-of-building.ts";

/** Runs that stood with the same bearings held, when the building was solved whole, on the same ground. */
export type HeldRuns = {
  readonly held: readonly string[];
  readonly runs: readonly StrengthRun[];
  readonly ground: Ground;
};

export type TriedAnswer = TriedCombination | FrameRefusal;

/** Solves runs held as they are grouped, on a building in which one container was changed. */
export type TriedSolver = (group: HeldRuns) => ReadonlyMap<string, TriedAnswer>;

/**
 * What stands round one container under one set of assumptions while the container changes. A run is first solved in the states
 * of the bearings in which it stood before; where none of them stands any more the whole building is solved with contact.
 */
export class Surroundings {
  private readonly model: BuildingModel;
  private readonly unitId: string;
  private readonly bearings: readonly ModelledBearing[];
  private readonly cache: CondensationCache;
  private readonly rests = new Map<Ground, RestOfBuilding | undefined>();
  /** By run: the states it stood in, the last first. */
  private readonly states = new Map<string, readonly ContactState[]>();

  constructor(model: BuildingModel, unitId: string, bearings: readonly ModelledBearing[], cache: CondensationCache) {
    this.model = model;
    this.unitId = unitId;
    this.bearings = bearings;
    this.cache = cache;
  }

  /** With this container in its place. */
  with(unit: PlacedUnit): TriedSolver {
    const whole = new Map<Ground, BuildingSolver>();
    const wholeOn = (ground: Ground): BuildingSolver => {
      const units = this.model.units.map((one) => (one.id === unit.id ? unit : one));
      const solver = whole.get(ground) ?? buildingSolver(this.modelOn(ground, { ...this.model, units }), this.cache);
      whole.set(ground, solver);
      return solver;
    };
    return (group) => this.solve(unit, group, wholeOn);
  }

  private solve(
    unit: PlacedUnit,
    group: HeldRuns,
    wholeOn: (ground: Ground) => BuildingSolver,
  ): Map<string, TriedAnswer> {
    const { held, runs, ground } = group;
    const names = new Set(this.bearings.filter(({ ownerId }) => held.includes(ownerId)).map(({ name }) => name));
    const answers = new Map<string, TriedAnswer>(this.inKnownStates(unit, group, names));
    const left = runs.filter(({ id }) => !answers.has(id));
    if (left.length === 0) return answers;
    const solved = wholeOn(ground)(Object.fromEntries(left.map(({ id, factors }) => [id, factors])), names);
    for (const run of left) {
      const answer = solved.get(run.id);
      if (answer === undefined) throw new Error(`run ${run.id} has no answer`);
      if (!("refused" in answer) && isPlain(answer.state)) this.note(group, run, answer.state);
      answers.set(run.id, answer);
    }
    return answers;
  }

  private inKnownStates(unit: PlacedUnit, group: HeldRuns, names: ReadonlySet<string>): Map<string, TriedCombination> {
    const answers = new Map<string, TriedCombination>();
    const rest = this.restOn(group.ground);
    const own = rest?.joined(unit);
    if (rest === undefined || own === undefined) return answers;
    for (let nth = 0; nth < STATES_KEPT; nth++) {
      const left = group.runs.filter(({ id }) => !answers.has(id));
      for (const { state, runs } of this.byState(group, left, nth)) {
        const combos = runs.map(({ factors }) => factors);
        rest.solve(own, combos, state, names).forEach((answer, n) => {
          const run = runs[n];
          if (answer !== undefined && run !== undefined) answers.set(run.id, answer);
        });
      }
    }
    for (const run of group.runs) {
      const answer = answers.get(run.id);
      if (answer !== undefined) this.note(group, run, answer.state);
    }
    return answers;
  }

  /** Runs by the state they stood in so many states ago. */
  private byState(group: HeldRuns, runs: readonly StrengthRun[], nth: number): Iterable<RunsInState> {
    const byState = new Map<string, RunsInState>();
    for (const run of runs) {
      const state = this.states.get(placeOf(group, run))?.[nth];
      if (state === undefined) continue;
      const key = stateKey(state);
      const alike = byState.get(key) ?? { state, runs: [] };
      alike.runs.push(run);
      byState.set(key, alike);
    }
    return byState.values();
  }

  private note(group: HeldRuns, run: StrengthRun, state: ContactState): void {
    const place = placeOf(group, run);
    const key = stateKey(state);
    const others = (this.states.get(place) ?? []).filter((known) => stateKey(known) !== key);
    this.states.set(place, [state, ...others].slice(0, STATES_KEPT));
  }

  private restOn(ground: Ground): RestOfBuilding | undefined {
    if (!this.rests.has(ground))
      this.rests.set(ground, RestOfBuilding.of(this.modelOn(ground, this.model), this.unitId, this.cache));
    return this.rests.get(ground);
  }

  private modelOn(ground: Ground, model: BuildingModel): BuildingModel {
    return onGround(ground, model, this.bearings);
  }
}

type RunsInState = { readonly state: ContactState; readonly runs: StrengthRun[] };

/** As an opening moves, a run goes to and fro between a few. */
const STATES_KEPT = 4;

const placeOf = ({ held, ground }: HeldRuns, { id }: StrengthRun): string => `${ground} ${held.join(" ")}: ${id}`;

/**
 * Whether no bearing that holds something lifts. Then no other state stands; where one has lost its hold another may stand as well,
 * and which of them is reached hangs on the way there.
 */
const isPlain = ({ lost }: ContactState): boolean => lost.every((flag) => flag === 0);
