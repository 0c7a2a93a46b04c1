import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { sharesUnder, type LoadBasis } from "../analysis/load-basis.ts";
import { reducedUnder, type LocalUnitLoads } from "../analysis/unit-loads.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import { recoverInner } from "../numerics/sparse-solve.ts";
import { addFixedForces, FORCES_OF_LINE, forcesOf, innerRows, type InnerRows } from "./inner-forces.ts";

/** A run with the movements of the freedoms by which the container is joined to others, in its own axes. */
export type SolvedSide = { readonly factors: Readonly<Record<string, number>>; readonly retained: Float64Array };

/** Forces of its lines and flows of its sheets, in one array. */
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
    const { cache, known } = this;
    const condensation = cache.part(unit.fragment);
    if (!condensation.stable) throw new Error(`container ${unit.id} is a mechanism`);
    const { condensed } = condensation;
    const inner = known.take(unit.fragment.key, () => innerRows(condensed));
    return forcesIn(unit.id, inner, condensed.factor, cache.loadsOn(unit, condensed), sides);
  }
}

function forcesIn(
  unitId: string,
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
  const { lines, panels } = inner.layout;
  const moved = forcesOf(inner, x, sides.length);
  const ofSide = withHeldLoads(inner, loads.basis, moved, sides.length);
  const at = (id: string): number => {
    const place = lines.get(id) ?? panels.get(id);
    if (place === undefined) throw new RangeError(`container ${unitId} has no line or sheet ${id}`);
    return place;
  };
  return combos.map((combo, s) => ({ values: ofSide(s, combo), at, panelAt: at }));
}

/** Forces of one run: those of its movements, and what loaded lines take with their ends held. */
function withHeldLoads(inner: InnerRows, basis: LoadBasis, moved: Float64Array, sides: number) {
  const { length, lines } = inner.layout;
  const count = basis.loads.length;
  const held = new Float64Array(length * count);
  addFixedForces(held, inner, basis);
  const loaded = [...basis.slots.lines.keys()].map((line) => lines.get(line) ?? 0);
  return (side: number, combo: Readonly<Record<string, number>>): Float64Array => {
    const shares = sharesUnder(basis, combo);
    const values = new Float64Array(length);
    for (let n = 0; n < length; n++) values[n] = moved[n * sides + side] ?? 0;
    for (const line of loaded) addHeld(values, line, held, shares);
    return values;
  };
}

/** Nine forces of one line. */
function addHeld(values: Float64Array, line: number, held: Float64Array, shares: Float64Array): void {
  for (let n = line; n < line + FORCES_OF_LINE; n++) {
    let sum = values[n] ?? 0;
    for (let k = 0; k < shares.length; k++) sum += (shares[k] ?? 0) * (held[n * shares.length + k] ?? 0);
    values[n] = sum;
  }
}
