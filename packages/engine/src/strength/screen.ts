import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import type { AssumptionId } from "./assumption-sets.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { Screened, StrengthPart } from "./strength-part.ts";
import type { StrengthRun } from "./run-plan.ts";

/** The run that governs a part, and its utilisation there. */
export type Governing = { readonly use: number; readonly solved: SolvedRun };

/** The worst of one part, apart for runs that stand as drawn and for those that need something held. */
export type PartWorst = {
  readonly part: StrengthPart;
  readonly asDrawn?: Governing;
  readonly heldDown?: Governing;
  /** Greatest utilisation of runs that stand as drawn in each set that was solved for it. */
  readonly envelope: ReadonlyMap<AssumptionId, number>;
};

/** Runs every part through every solved run of its level, owner by owner, adding to what was found before. */
export function screen(
  parts: readonly StrengthPart[],
  runs: readonly SolvedRun[],
  before: readonly PartWorst[] = [],
): PartWorst[] {
  const known = new Map(before.map((worst) => [worst.part.id, new Worst(worst)]));
  const worsts = parts.map((part) => ({ part, worst: known.get(part.id) ?? new Worst({ part, envelope: new Map() }) }));
  // forces inside a container are worked out run by run for all its parts
  for (const [ownerId, own] of byOwner(worsts)) {
    const at = (level: CombinationLevel) => own.filter(({ part }) => part.level === level);
    const heldAt = { strength: at("strength"), allowable: at("allowable") };
    for (const solved of runs) {
      if (!isForOwner(solved.run, ownerId)) continue;
      for (const { part, worst } of heldAt[solved.run.level]) {
        const use = part.use(solved, worst.least(solved));
        if (use > 0) worst.add(use, solved);
        else if (Number.isNaN(use)) throw new Error(`${part.id} has no utilisation in ${solved.run.id}`);
      }
    }
  }
  for (const { worst } of worsts) known.set(worst.id, worst);
  return [...known.values()].flatMap((worst) => worst.stated());
}

/** Runs of its level, and those for its owner. */
export const isHeldAgainst = ({ level, ownerId }: StrengthPart, run: StrengthRun): boolean =>
  level === run.level && isForOwner(run, ownerId);

/** Runs with overstrength are only for what they are meant for. */
export const isForOwner = ({ owners }: StrengthRun, ownerId: string): boolean => owners?.has(ownerId) !== false;

function byOwner<T extends { readonly part: StrengthPart }>(all: readonly T[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const group = groups.get(one.part.ownerId);
    if (group === undefined) groups.set(one.part.ownerId, [one]);
    else group.push(one);
  }
  return groups;
}

/** What governs, with what decides there. */
export function governingOf(worst: PartWorst): Governing & { readonly screened: Screened } {
  const found = governs(worst);
  return { ...found, screened: worst.part.decide(found.solved) };
}

/** A run that stands as drawn where there is one. */
export function governs({ part, asDrawn, heldDown }: PartWorst): Governing {
  const found = asDrawn ?? heldDown;
  if (found === undefined) throw new Error(`${part.id} was screened by no run`);
  return found;
}

/** The runs that govern some part, each once, in the order they were solved. */
export function governingRuns(worsts: readonly PartWorst[]): SolvedRun["run"][] {
  const runs = worsts.flatMap(({ asDrawn, heldDown }) => [asDrawn, heldDown]);
  return [...new Map(runs.flatMap((one) => (one === undefined ? [] : [[one.solved.run.id, one.solved.run]]))).values()];
}

class Worst {
  private readonly part: StrengthPart;
  private readonly envelope: Map<AssumptionId, number>;
  private asDrawn: Governing | undefined;
  private heldDown: Governing | undefined;

  constructor({ part, asDrawn, heldDown, envelope }: PartWorst) {
    this.part = part;
    this.asDrawn = asDrawn;
    this.heldDown = heldDown;
    this.envelope = new Map(envelope);
  }

  get id(): string {
    return this.part.id;
  }

  /** A use in this run that is no greater changes nothing. */
  least({ held, set }: SolvedRun): number {
    return (held.length > 0 ? this.heldDown?.use : this.envelope.get(set.id)) ?? 0;
  }

  add(use: number, solved: SolvedRun): void {
    if (solved.held.length > 0) {
      if (exceeds(use, this.heldDown?.use ?? 0)) this.heldDown = { use, solved };
      return;
    }
    const { id } = solved.set;
    if (exceeds(use, this.asDrawn?.use ?? 0)) this.asDrawn = { use, solved };
    if (use > (this.envelope.get(id) ?? 0)) this.envelope.set(id, use);
  }

  /** A part on which nothing acts in any run is none. */
  stated(): PartWorst[] {
    const { part, asDrawn, heldDown, envelope } = this;
    if (asDrawn === undefined && heldDown === undefined) return [];
    return [{ part, envelope, ...(asDrawn && { asDrawn }), ...(heldDown && { heldDown }) }];
  }
}

/** Of runs that cannot be told apart the first governs, as mirrored ones often do: rounding decides nothing. */
export const exceeds = (use: number, most: number): boolean => use > most * (1 + SOLUTION_ACCURACY);
