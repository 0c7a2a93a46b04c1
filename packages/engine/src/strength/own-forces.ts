import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { sharesUnder, type LoadBasis } from "../analysis/load-basis.ts";
import { reducedUnder, type LocalUnitLoads } from "../analysis/unit-loads.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import { recoverInner } from "../numerics/sparse-solve.ts";
import { addFixedForces, forcesOf, innerRows, rowsOfLoaded, type InnerRows } from "./inner-forces.ts";
import { ToldForces } from "./told-forces.ts";

/** A run with the movements of the freedoms by which the container is joined to others, in its own axes. */
export type SolvedSide = { readonly factors: Readonly<Record<string, number>>; readonly retained: Float64Array };

/** Forces of its lines, nine of each, and flows of its sheets, in one array. */
export type OwnForces = {
  readonly values: Float64Array;
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
};

/**
 * Forces inside containers that are solved for a few runs and left: recovered from the movements themselves, since influences
 * of every bearing point would cost more. How they come about is found once for each fabric.
 */
export class OwnInsides {
  private readonly cache: CondensationCache;
  private readonly known: RecentlyMade<InnerRows>;

  /** `kept`: of so many fabrics. */
  constructor(cache: CondensationCache, kept = 1) {
    this.cache = cache;
    this.known = new RecentlyMade(kept);
  }

  /** Of one container in several runs. */
  forces(unit: PlacedUnit, sides: readonly SolvedSide[]): OwnForces[] {
    const { inner, condensed, loads } = this.inside(unit);
    return forcesIn(inner, condensed.factor, loads, sides);
  }

  /** Where they stand. */
  told(unit: PlacedUnit): ToldForces {
    const { inner, loads } = this.inside(unit);
    return new ToldForces(inner.layout, loads.basis);
  }

  private inside(unit: PlacedUnit) {
    const { cache, known } = this;
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
    const { condensed } = condensation;
    const inner = known.take(unit.fragment.key, () => innerRows(condensed));
    return { inner, condensed, loads: cache.loadsOn(unit, condensed) };
  }
}

function forcesIn(
  inner: InnerRows,
  factor: SparseFactor,
  loads: LocalUnitLoads,
  sides: readonly SolvedSide[],
): OwnForces[] {
  const { equations, eliminated } = factor.tree;
  const combos = sides.map(({ factors }) => factors);
  const x = reducedUnder(loads, combos, equations);
  sides.forEach(({ retained }, s) => retained.forEach((value, k) => (x[(eliminated + k) * sides.length + s] = value)));
  recoverInner(factor, x, sides.length);
  const told = new ToldForces(inner.layout, loads.basis);
  const moved = forcesOf(inner, x, sides.length);
  const held = heldRows(inner, loads.basis, told.rows);
  const worked = new Float64Array(told.rows);
  return combos.map((combo, s) => {
    worked.fill(0);
    for (let n = 0; n < inner.layout.length; n++) worked[n] = moved[n * sides.length + s] ?? 0;
    held(sharesUnder(loads.basis, combo), worked);
    const values = new Float64Array(told.length);
    told.write(worked, values);
    return { values, at: told.at, panelAt: told.panelAt };
  });
}

/** Adds what loaded lines take with their ends held, under shares of the loads of the basis, to the rows of one run. */
function heldRows(inner: InnerRows, basis: LoadBasis, rows: number) {
  const count = basis.loads.length;
  const held = new Float64Array(rows * count);
  addFixedForces(held, inner, basis);
  const loaded = rowsOfLoaded(inner, basis);
  return (shares: Float64Array, worked: Float64Array): void => {
    for (const n of loaded) {
      let sum = worked[n] ?? 0;
      for (let k = 0; k < count; k++) sum += (shares[k] ?? 0) * (held[n * count + k] ?? 0);
      worked[n] = sum;
    }
  };
}
