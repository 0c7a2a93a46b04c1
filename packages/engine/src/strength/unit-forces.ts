import type { BoundedStore } from "../analysis/bounded-store.ts";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { sharesUnder, type LoadBasis } from "../analysis/load-basis.ts";
import type { BuildingCombination } from "../building.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { addRowsTimesTwo } from "../numerics/rows-times.ts";
import { heldForces, innerInfluence, type ForceLayout, type InnerInfluence } from "./inner-forces.ts";

/** Influences by the key of the container they belong to. */
export type InfluenceStore = BoundedStore<InnerInfluence>;

/** A solved run and how often each case counts in it. */
export type Loaded = { readonly solved: BuildingCombination; readonly factors: Readonly<Record<string, number>> };

/** Where the forces of a line, or the flow of a sheet, stand among the forces of a container. */
export type ForcePlaces = { readonly at: (id: string) => number; readonly panelAt: (id: string) => number };

/**
 * Forces inside one container for any run: what its bearing points' movements cause, and what its loads cause with them
 * held. Exact in every state of the bearings, since what lies inside a container never opens.
 */
export class UnitForces {
  readonly places: ForcePlaces;
  private readonly layout: ForceLayout;
  private readonly unitId: string;
  private readonly byMovement: Float64Array;
  private readonly byLoad: Float64Array;
  private readonly basis: LoadBasis;
  /** Of two runs at a time: whoever asks for one asks for the next one next. */
  private readonly sums: readonly [Float64Array, Float64Array];
  private held: readonly (BuildingCombination | undefined)[] = [];

  constructor(unit: PlacedUnit, cache: CondensationCache, influences: InfluenceStore) {
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
    const { condensed } = condensation;
    const influence = influences.take(unit.fragment.key, () => innerInfluence(condensed));
    const loads = cache.loadsOn(unit, condensed);
    this.layout = influence.layout;
    this.places = placesIn(influence.layout);
    this.byMovement = influence.byMovement;
    this.byLoad = heldForces(influence, condensed, loads);
    this.basis = loads.basis;
    this.unitId = unit.id;
    this.sums = [new Float64Array(influence.layout.length), new Float64Array(influence.layout.length)];
  }

  /** Valid until asked for another run; `next` is the one that is asked for after it. */
  under(run: Loaded, next: Loaded | undefined): Float64Array {
    const known = this.held.indexOf(run.solved);
    if (known >= 0) return this.sums[known] ?? this.sums[0];
    this.held = [run.solved, next?.solved];
    const second = next ?? run;
    const [first, other] = this.sums;
    const { length } = this.layout;
    first.fill(0);
    other.fill(0);
    addRowsTimesTwo(this.byMovement, length, this.moved(run), this.moved(second), first, other);
    addRowsTimesTwo(this.byLoad, length, this.shares(run), this.shares(second), first, other);
    return first;
  }

  private moved({ solved }: Loaded): Float64Array {
    return solved.retainedIn(this.unitId);
  }

  private shares({ factors }: Loaded): Float64Array {
    return sharesUnder(this.basis, factors);
  }
}

const placesIn = ({ lines, panels }: ForceLayout): ForcePlaces => ({
  at: (id) => lines.get(id) ?? missing(id),
  panelAt: (id) => panels.get(id) ?? missing(id),
});

function missing(id: string): never {
  throw new RangeError(`the model has no line or sheet ${id}`);
}
