import type { AssumptionId } from "../strength/assumption-sets.ts";
import type { PartWorst } from "../strength/screen.ts";
import type { TrialSet } from "./trial-ground.ts";

/** What a place looked at under every set says of the vectors that draw boundaries near it. */
export type Deciders = {
  /** One of each of these sets of assumptions has to be looked at. */
  readonly sets: readonly ReadonlySet<AssumptionId>[];
  readonly runs: readonly string[];
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
    sets: known.flatMap(setsOf),
    runs: known.flatMap(({ asDrawn, heldDown }) => [asDrawn, heldDown].flatMap((worst) => worst?.solved.run.id ?? [])),
  };
}

function setsOf({ asDrawn, heldDown, envelope }: PartWorst): ReadonlySet<AssumptionId>[] {
  const held = heldDown === undefined || heldDown.use > FAR ? [] : [new Set([heldDown.solved.set.id])];
  if (asDrawn === undefined) return held;
  const uses = [...envelope];
  const least = Math.min(...envelope.values());
  if (least > FAR) return held;
  const worst = new Set(uses.flatMap(([id, use]) => (use * ALIKE >= asDrawn.use ? [id] : [])));
  const best = new Set(uses.flatMap(([id, use]) => (use <= least * ALIKE ? [id] : [])));
  return asDrawn.use > 1 ? [...held, worst, best] : [...held, worst];
}

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
  private readonly ids = new Set<AssumptionId>();
  private readonly runs = new Set<string>();
  private chosen: readonly TrialSet[] = [];

  /** `whole`: every set with every run that governs; the first is always among the deciding ones. `all`: so are all others. */
  constructor(whole: readonly TrialSet[], all: boolean) {
    this.whole = whole;
    for (const { set } of whole.slice(0, 1)) this.ids.add(set.id);
    if (all) this.chosen = whole;
  }

  /** Changes as vectors join. */
  get key(): string {
    return `${this.ids.size} ${this.runs.size}`;
  }

  get sets(): readonly TrialSet[] {
    return this.chosen;
  }

  join({ sets, runs }: Deciders): void {
    if (this.chosen === this.whole) return;
    for (const run of runs) this.runs.add(run);
    let open = sets.filter((one) => one.size > 0 && !this.has(one));
    while (open.length > 0) {
      const ids = this.whole.map(({ set }) => set.id);
      const count = (id: AssumptionId): number => open.filter((one) => one.has(id)).length;
      const [next] = ids.toSorted((a, b) => count(b) - count(a));
      if (next === undefined || count(next) === 0) break;
      this.ids.add(next);
      open = open.filter((one) => !one.has(next));
    }
    this.chosen = this.whole.flatMap((one) => (this.ids.has(one.set.id) ? [this.withRuns(one)] : []));
  }

  private has(any: ReadonlySet<AssumptionId>): boolean {
    return [...any].some((id) => this.ids.has(id));
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
