import type { CondensationCache } from "../analysis/condensation-cache.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { OwnInsides, type OwnForces } from "./own-forces.ts";
import type { InsideForces, Loaded } from "./unit-forces.ts";

/** Forces inside one container under a few runs that are all known, by their tokens. */
export class ForcesOfRuns implements InsideForces {
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  private readonly byToken: ReadonlyMap<object, OwnForces>;

  constructor(unit: PlacedUnit, cache: CondensationCache, runs: readonly Loaded[]) {
    const forces = new OwnInsides(cache).forces(
      unit,
      runs.map(({ solved, factors }) => ({ factors, retained: solved.retainedIn(unit.id) })),
    );
    const [first] = forces;
    if (first === undefined) throw new RangeError("no run to tell the inside of a container for");
    this.at = first.at;
    this.panelAt = first.panelAt;
    this.byToken = new Map(runs.map(({ token }, r) => [token, forces[r] ?? first]));
  }

  under({ token }: Loaded): OwnForces["values"] {
    const own = this.byToken.get(token);
    if (own === undefined) throw new RangeError("a run that the inside of the container is not told for");
    return own.values;
  }

  flowsUnder(run: Loaded): OwnForces["values"] {
    return this.under(run);
  }
}
