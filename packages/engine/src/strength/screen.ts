import type { AssumptionId } from "./assumption-sets.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { Screened, StrengthPart } from "./strength-part.ts";

/** What one run says of a part. */
export type Governing = { readonly screened: Screened; readonly solved: SolvedRun };

/** The worst of one part, apart for runs that stand as drawn and for those that need bearings to hold what lifts. */
export type PartWorst = {
  readonly part: StrengthPart;
  readonly asDrawn?: Governing;
  readonly heldDown?: Governing;
  /** Greatest utilisation of runs that stand as drawn in each set that was solved for it. */
  readonly envelope: ReadonlyMap<AssumptionId, number>;
};

/** Runs every part through every solved run of its level, adding to what was found before. */
export function screen(
  parts: readonly StrengthPart[],
  runs: readonly SolvedRun[],
  before: readonly PartWorst[] = [],
): PartWorst[] {
  const known = new Map(before.map((worst) => [worst.part.id, new Worst(worst)]));
  for (const solved of runs)
    for (const part of parts) {
      if (part.level !== solved.run.level) continue;
      const screened = part.screen(solved);
      if (screened === undefined) continue;
      const worst = known.get(part.id) ?? new Worst({ part, envelope: new Map() });
      known.set(part.id, worst);
      worst.add({ screened, solved });
    }
  return [...known.values()].map((worst) => worst.stated());
}

/** What governs: a run that stands as drawn where there is one. */
export function governingOf({ part, asDrawn, heldDown }: PartWorst): Governing {
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

  add(one: Governing): void {
    if (one.solved.heldDown) {
      this.heldDown = greater(this.heldDown, one);
      return;
    }
    const { id } = one.solved.set;
    this.asDrawn = greater(this.asDrawn, one);
    this.envelope.set(id, Math.max(this.envelope.get(id) ?? 0, one.screened.utilisation));
  }

  stated(): PartWorst {
    const { part, asDrawn, heldDown, envelope } = this;
    return { part, envelope, ...(asDrawn && { asDrawn }), ...(heldDown && { heldDown }) };
  }
}

const greater = (before: Governing | undefined, next: Governing): Governing =>
  before !== undefined && before.screened.utilisation >= next.screened.utilisation ? before : next;
