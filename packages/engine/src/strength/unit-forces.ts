import type { BoundedStore } from "../analysis/bounded-store.ts";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { sharesUnder, type LoadBasis } from "../analysis/load-basis.ts";
import type { BuildingCombination } from "../building.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { heldForces, innerInfluence, type ForceLayout, type InnerInfluence } from "./inner-forces.ts";

/** Influences by the key of the container they belong to. */
export type InfluenceStore = BoundedStore<InnerInfluence>;

/**
 * Forces inside one container for any run: what its bearing points' movements cause, and what its loads cause with them
 * held. Exact in every state of the bearings, since what lies inside a container never opens.
 */
export class UnitForces {
  readonly layout: ForceLayout;
  private readonly unitId: string;
  private readonly columns: readonly Float64Array[];
  private readonly basis: LoadBasis;
  private readonly sum: Float64Array;
  private last: BuildingCombination | undefined;

  constructor(unit: PlacedUnit, cache: CondensationCache, influences: InfluenceStore) {
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
    const { condensed } = condensation;
    const influence = influences.take(unit.fragment.key, () => innerInfluence(condensed));
    const loads = cache.loadsOn(unit, condensed);
    this.layout = influence.layout;
    this.columns = [...influence.columns, ...heldForces(influence, condensed, loads)];
    this.basis = loads.basis;
    this.unitId = unit.id;
    this.sum = new Float64Array(influence.layout.length);
  }

  /** Valid until asked for another run. */
  under(solved: BuildingCombination, factors: Readonly<Record<string, number>>): Float64Array {
    if (this.last === solved) return this.sum;
    this.last = solved;
    const times = [...solved.retainedIn(this.unitId), ...sharesUnder(this.basis, factors)];
    const acting = times.flatMap((factor, n) => (factor === 0 ? [] : [n]));
    sumOf(
      acting.map((n) => this.columns[n] ?? NOTHING),
      acting.map((n) => times[n] ?? 0),
      this.sum,
    );
    return this.sum;
  }
}

const NOTHING = new Float64Array(0);

/** Σ factor·column, four columns at a time: each loaded sum serves four. */
function sumOf(columns: readonly Float64Array[], times: readonly number[], sum: Float64Array): void {
  const nothing = new Float64Array(sum.length);
  sum.fill(0);
  for (let k = 0; k < columns.length; k += 4) {
    const [a, b] = [columns[k] ?? nothing, columns[k + 1] ?? nothing];
    const [c, d] = [columns[k + 2] ?? nothing, columns[k + 3] ?? nothing];
    addFour(sum, a, b, c, d, times[k] ?? 0, times[k + 1] ?? 0, times[k + 2] ?? 0, times[k + 3] ?? 0);
  }
}

function addFour(
  sum: Float64Array,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
  d: Float64Array,
  fa: number,
  fb: number,
  fc: number,
  fd: number,
): void {
  for (let n = 0; n < sum.length; n++)
    sum[n] = (sum[n] ?? 0) + (a[n] ?? 0) * fa + (b[n] ?? 0) * fb + (c[n] ?? 0) * fc + (d[n] ?? 0) * fd;
}
