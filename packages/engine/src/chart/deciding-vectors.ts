import type { AssumptionId } from "../strength/assumption-sets.ts";
import type { PartWorst } from "../strength/screen.ts";
import type { TrialSet } from "./trial-ground.ts";

/** What a place looked at under every set says of the vectors that draw boundaries near it. */
export type Deciders = {
  /** One of each of these sets of assumptions has to be looked at: some part is worst under it. */
  readonly worst: readonly ReadonlySet<AssumptionId>[];
  /** The same where a part beyond its strength is best. */
  readonly best: readonly ReadonlySet<AssumptionId>[];
  readonly runs: readonly string[];
  /** Units in which a part draws it. */
  readonly owners: readonly string[];
  /** By how much a use differs from set to set, greatest over least of one part. */
  readonly spread: number;
};

/**
 * Parts less used than the first, or more than the second in every set, do not draw a boundary nearby: what they would add is
 * found when an answer is confirmed. Judged, no published source.
 */
const NEAR = 0.7;
const FAR = 1.5;
/** Sets in which a use differs by less cannot be told apart by a step of widths. Judged, no published source. */
const ALIKE = 1.01;

/** The vectors under which these parts are worst; of those beyond their strength also the sets in which they are best. */
export function decidersOf(worsts: readonly PartWorst[]): Deciders {
  const known = nearTheirStrength(worsts);
  return {
    worst: known.flatMap(worstSets),
    best: known.flatMap(bestSets),
    runs: known.flatMap(({ asDrawn, heldDown }) => [asDrawn, heldDown].flatMap((worst) => worst?.solved.run.id ?? [])),
    owners: known.map(({ part }) => part.ownerId),
    spread: Math.max(1, ...known.flatMap(spreadOf)),
  };
}

function worstSets({ asDrawn, heldDown, envelope }: PartWorst): ReadonlySet<AssumptionId>[] {
  const held = heldDown === undefined || heldDown.use > FAR ? [] : [new Set([heldDown.solved.set.id])];
  if (asDrawn === undefined || leastOf(envelope) > FAR) return held;
  return [...held, new Set([...envelope].flatMap(([id, use]) => (use * ALIKE >= asDrawn.use ? [id] : [])))];
}

function bestSets({ asDrawn, envelope }: PartWorst): ReadonlySet<AssumptionId>[] {
  const least = leastOf(envelope);
  if (asDrawn === undefined || asDrawn.use <= 1 || least > FAR) return [];
  return [new Set([...envelope].flatMap(([id, use]) => (use <= least * ALIKE ? [id] : [])))];
}

function spreadOf({ asDrawn, envelope }: PartWorst): number[] {
  const spread = asDrawn === undefined ? 1 : asDrawn.use / leastOf(envelope);
  return Number.isFinite(spread) ? [spread] : [];
}

const leastOf = (envelope: PartWorst["envelope"]): number => Math.min(...envelope.values());

/** The most used one where none is near. */
function nearTheirStrength(worsts: readonly PartWorst[]): readonly PartWorst[] {
  const near = worsts.filter((worst) => greatestUse(worst) >= NEAR);
  if (near.length > 0) return near;
  return worsts.toSorted((a, b) => greatestUse(b) - greatestUse(a)).slice(0, 1);
}

const greatestUse = ({ asDrawn, heldDown }: PartWorst): number => Math.max(asDrawn?.use ?? 0, heldDown?.use ?? 0);

/** The vectors under which boundaries are traced: all that decided where every set was looked at. None ever leaves. */
export class DecidingVectors {
  private readonly whole: readonly TrialSet[];
  private readonly worst = new Set<AssumptionId>();
  private readonly best = new Set<AssumptionId>();
  private readonly runs = new Set<string>();
  private readonly owners = new Set<string>();
  private spread = FAR;
  private chosen: { readonly worst: readonly TrialSet[]; readonly best: readonly TrialSet[] } = { worst: [], best: [] };

  /** `whole`: every set with every run that governs; the first always decides if so told. `all`: so do all others. */
  constructor(whole: readonly TrialSet[], { first, all }: { readonly first: boolean; readonly all: boolean }) {
    this.whole = whole;
    if (first) for (const { set } of whole.slice(0, 1)) this.worst.add(set.id);
    if (all) this.chosen = { worst: whole, best: [] };
  }

  /** Changes as vectors join. */
  get key(): string {
    return `${this.worst.size} ${this.best.size} ${this.runs.size} ${this.owners.size}`;
  }

  get sets(): readonly TrialSet[] {
    return [...this.chosen.worst, ...this.chosen.best];
  }

  /** A part used more than this under one set is beyond its strength under all. */
  get far(): number {
    return this.spread;
  }

  /** Those under which something is worst: what works under them works under all. */
  get worstSets(): readonly TrialSet[] {
    return this.chosen.worst;
  }

  /** Further ones, under which what is beyond its strength is best. */
  get bestSets(): readonly TrialSet[] {
    return this.chosen.best;
  }

  /** Whether a part inside this unit drew a boundary. */
  isIn(unitId: string): boolean {
    return this.owners.has(unitId);
  }

  join({ worst, best, runs, owners, spread }: Deciders): void {
    const { whole } = this;
    for (const id of owners) this.owners.add(id);
    if (this.chosen.worst === whole) return;
    for (const run of runs) this.runs.add(run);
    this.spread = Math.max(this.spread, spread);
    this.cover(worst, this.worst);
    if (this.worst.size === 0) for (const { set } of whole.slice(0, 1)) this.worst.add(set.id);
    this.cover(best, this.best);
    for (const id of this.worst) this.best.delete(id);
    const chosen = (ids: ReadonlySet<AssumptionId>): TrialSet[] =>
      whole.flatMap((one) => (ids.has(one.set.id) ? [this.withRuns(one)] : []));
    this.chosen = { worst: chosen(this.worst), best: chosen(this.best) };
  }

  /** Adds as few as will do for one of each to be looked at. */
  private cover(wanted: readonly ReadonlySet<AssumptionId>[], ids: Set<AssumptionId>): void {
    const isOpen = (any: ReadonlySet<AssumptionId>): boolean =>
      any.size > 0 && [...any].every((id) => !ids.has(id) && !this.worst.has(id));
    let open = wanted.filter(isOpen);
    while (open.length > 0) {
      const count = (id: AssumptionId): number => open.filter((one) => one.has(id)).length;
      const [next] = this.whole.map(({ set }) => set.id).toSorted((a, b) => count(b) - count(a));
      if (next === undefined || count(next) === 0) break;
      ids.add(next);
      open = open.filter(isOpen);
    }
  }

  /** With the runs of gravity alone that these are told from. */
  private withRuns({ groups, ...rest }: TrialSet): TrialSet {
    const all = groups.flatMap(({ runs }) => runs);
    const alone = new Set(all.flatMap(({ id, gravityAlone }) => (this.runs.has(id) ? [gravityAlone] : [])));
    const chosen = groups.map((group) => ({
      ...group,
      runs: group.runs.filter(({ id }) => this.runs.has(id) || alone.has(id)),
    }));
    return { ...rest, groups: chosen.filter(({ runs }) => runs.length > 0) };
  }
}
