import type { BoundedStore } from "../analysis/bounded-store.ts";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { sharesUnder, type LoadBasis } from "../analysis/load-basis.ts";
import type { BuildingCombination } from "../building.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { ForceRows, type SeenRun } from "./force-rows.ts";
import { heldForces, innerInfluence, type InnerInfluence } from "./inner-forces.ts";

/** Influences by the key of the container they belong to. */
export type InfluenceStore = BoundedStore<InnerInfluence>;

/** A solved run and how often each case counts in it. */
export type Loaded = { readonly solved: BuildingCombination; readonly factors: Readonly<Record<string, number>> };

export type RunsAfter = (places: number) => Loaded | undefined;

/**
 * Forces inside one container for any run: what its bearing points' movements cause, and what its loads cause with them
 * held. Exact in every state of the bearings, since what lies inside a container never opens.
 */
export class UnitForces {
  /** Where the nine forces of a line stand among the forces of lines, and the flow of a sheet among flows. */
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  private readonly unitId: string;
  private readonly basis: LoadBasis;
  private readonly lines: ForceRows;
  private readonly panels: ForceRows;

  constructor(unit: PlacedUnit, cache: CondensationCache, influences: InfluenceStore) {
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
    const { condensed } = condensation;
    const influence = influences.take(unit.fragment.key, () => innerInfluence(condensed));
    const { layout, byMovement } = influence;
    const loads = cache.loadsOn(unit, condensed);
    const byLoad = heldForces(influence, condensed, loads);
    const first = layout.length - layout.panels.size;
    const rowsOf = (values: Float64Array, from: number, to: number): Float64Array => {
      const columns = values.length / layout.length;
      return values.subarray(from * columns, to * columns);
    };
    const between = (from: number, to: number): ForceRows =>
      new ForceRows(rowsOf(byMovement, from, to), rowsOf(byLoad, from, to), to - from);
    this.lines = between(0, first);
    this.panels = between(first, layout.length);
    this.at = (id) => layout.lines.get(id) ?? missing(id);
    this.panelAt = (id) => (layout.panels.get(id) ?? missing(id)) - first;
    this.basis = loads.basis;
    this.unitId = unit.id;
  }

  /** Forces of lines; valid until asked for another run. `after` gives the runs asked for after it, so many places on. */
  under(run: Loaded, after: RunsAfter): Float64Array {
    return this.lines.under(this.seen(run), (places) => this.seenAfter(after, places));
  }

  /** Flows of sheets, likewise. */
  flowsUnder(run: Loaded, after: RunsAfter): Float64Array {
    return this.panels.under(this.seen(run), (places) => this.seenAfter(after, places));
  }

  private seenAfter(after: RunsAfter, places: number): SeenRun | undefined {
    const run = after(places);
    return run && this.seen(run);
  }

  private seen({ solved, factors }: Loaded): SeenRun {
    return {
      solved,
      moved: () => solved.retainedIn(this.unitId),
      shares: () => sharesUnder(this.basis, factors),
    };
  }
}

function missing(id: string): never {
  throw new RangeError(`the model has no line or sheet ${id}`);
}
