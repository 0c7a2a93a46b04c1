import type { PlacedUnit } from "../model/building-model.ts";
import type { OwnForces, OwnInsides } from "./own-forces.ts";
import type { AskedRun, InsideForces, RunsAfter } from "./unit-forces.ts";

/** Forces inside one container under the few runs that are asked for, those asked for after one another recovered at once. */
export class ForcesOfRuns implements InsideForces {
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  private readonly unit: PlacedUnit;
  private readonly insides: OwnInsides;
  private readonly byToken = new Map<object, OwnForces["values"]>();

  constructor(unit: PlacedUnit, insides: OwnInsides) {
    [this.unit, this.insides] = [unit, insides];
    const { at, panelAt } = insides.told(unit);
    [this.at, this.panelAt] = [at, panelAt];
  }

  under(run: AskedRun, after: RunsAfter): OwnForces["values"] {
    return this.byToken.get(run.token) ?? this.recovered(run, after);
  }

  flowsUnder(run: AskedRun, after: RunsAfter): OwnForces["values"] {
    return this.under(run, after);
  }

  private recovered(run: AskedRun, after: RunsAfter): OwnForces["values"] {
    const runs = [run];
    for (let next = after(1); next !== undefined; next = after(runs.length))
      if (this.byToken.has(next.token)) break;
      else runs.push(next);
    const sides = runs.map(({ solved, factors }) => ({ factors, retained: solved.retainedIn(this.unit.id) }));
    this.insides.forces(this.unit, sides).forEach(({ values }, r) => this.byToken.set(runs[r]?.token ?? run, values));
    return this.byToken.get(run.token) ?? untold();
  }
}

function untold(): never {
  throw new Error("each run has its forces");
}
