import { buildModel, type BuiltModel } from "../model/build-model.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import { assumptionSets, type AssumptionId, type AssumptionSet } from "./assumption-sets.ts";
import { checkedParts } from "./checked-parts.ts";
import { deflectionResults } from "./deflection-results.ts";
import { resultUnder, type ElementResult } from "./element-result.ts";
import { erectionResults } from "./erection-results.ts";
import { floorResults } from "./floor-results.ts";
import { andGravityAlone } from "./gravity-alone.ts";
import { liftResults } from "./lift-results.ts";
import { modelledBearings, type ModelledBearing } from "./modelled-bearings.ts";
import { partsMadeWith } from "./parts-made.ts";
import { screenedSet, type ScreenedSet } from "./screened-set.ts";
import { solveSettling } from "./settling.ts";
import { insidesAtHand, type SolvedRun, type StrengthMemory } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";
import { leansOn, type StrengthGround } from "./strength-plan.ts";
import type { Lean } from "./sway.ts";
import { enlarged } from "./sway-runs.ts";
import { governsIn, type WorstFound } from "./worst-found.ts";

/** What is judged beside the runs, by statics or by solutions of its own. */
export const besides = ["lift", "deflection", "erection", "floor"] as const;
export type Beside = (typeof besides)[number];

/**
 * The work of a strength run in pieces that may be done in any thread: each gives plain data, the same bits wherever it is
 * done. What one piece leaves at hand serves the next ones in the same thread.
 */
export class StrengthShare {
  readonly ground: StrengthGround;
  private readonly basis: StrengthBasis;
  private readonly memory: StrengthMemory;
  private readonly runs = new Map<string, SolvedRun>();
  private model: BuiltModel | undefined;
  private checked: readonly StrengthPart[] | undefined;

  constructor(ground: StrengthGround, basis: StrengthBasis, memory: StrengthMemory) {
    [this.ground, this.basis, this.memory] = [ground, basis, memory];
  }

  /** The model on usual assumptions, with everything that acts: names of lines and bearings are the same in every set. */
  get built(): BuiltModel {
    this.model ??= buildModel(this.ground.analysis, this.acting, {}, usualAssumptions);
    return this.model;
  }

  get bearings(): ModelledBearing[] {
    return modelledBearings(this.built, this.ground.analysis.structure.building);
  }

  leans(): Lean[] {
    return leansOn(this.ground, this.basis, this.memory);
  }

  /** Condenses containers as a set takes them, before it is known which runs it solves. */
  prepare(id: AssumptionId): void {
    const { analysis } = this.ground;
    const { model } =
      id === base.id ? this.built : buildModel(analysis, this.acting, {}, setOf(id).assumptions, this.built.model);
    insidesAtHand(model, this.memory);
  }

  /** A set solved for every run, or for these, with every part screened. */
  screened(id: AssumptionId, enlargement: number, names?: ReadonlySet<string>): ScreenedSet {
    const { analysis, cases, firstOrder, scheme } = this.ground;
    const all = enlarged(firstOrder, enlargement).runs;
    const chosen =
      names === undefined
        ? all
        : andGravityAlone(
            all.filter((run) => names.has(run.id)),
            all,
          );
    // loads of the same cases give the same bits: those of the base set, whatever was prepared
    const alike = id === base.id ? this.model?.model : this.built.model;
    const solved = solveSettling(analysis, cases, chosen, setOf(id), this.memory, alike);
    if (id === base.id) this.model ??= solved.built;
    for (const one of solved.solved) this.runs.set(nameOf(id, one.run.id), one);
    return screenedSet(this.parts, this.bearings, solved, scheme.basis.friction);
  }

  /** The full working of parts that are governed by runs solved here. */
  results(worsts: readonly WorstFound[]): ElementResult[] {
    const parts = new Map(this.parts.map((part) => [part.id, part]));
    return worsts.map((worst) => {
      const { run, assumptions } = governsIn(worst);
      const [solved, part] = [this.runs.get(nameOf(assumptions, run)), parts.get(worst.partId)];
      if (solved === undefined || part === undefined) throw new Error(`${worst.partId} is governed elsewhere`);
      return resultUnder(solved, { ...worst, part });
    });
  }

  beside(what: Beside): ElementResult[] {
    const { scheme, analysis, actions } = this.ground;
    if (what === "lift") return liftResults(scheme, this.basis, this.memory);
    if (what === "deflection") return deflectionResults(scheme, analysis, actions, this.basis.factored, this.memory);
    if (what === "erection") return erectionResults(scheme, analysis, this.basis);
    return floorResults(scheme, actions.imposed, this.basis);
  }

  private get parts(): readonly StrengthPart[] {
    const { analysis, scheme } = this.ground;
    this.checked ??= checkedParts(analysis, this.built, scheme, this.basis, partsMadeWith(this.memory));
    return this.checked;
  }

  private get acting() {
    const used = new Set(this.ground.firstOrder.runs.flatMap(({ factors }) => Object.keys(factors)));
    return this.ground.cases.filter(({ id }) => used.has(id));
  }
}

const [base] = assumptionSets;

function setOf(id: AssumptionId): AssumptionSet {
  const set = assumptionSets.find((one) => one.id === id);
  if (set === undefined) throw new RangeError(`there is no set of assumptions ${id}`);
  return set;
}

const nameOf = (id: AssumptionId, run: string): string => `${id} ${run}`;
