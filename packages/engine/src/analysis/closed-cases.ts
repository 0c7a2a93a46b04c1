import { buildingLoads } from "./building-loads.ts";
import type { BuildingSystem } from "./building-system.ts";
import type { CombinedLoads } from "./combined-loads.ts";
import type { Action } from "./equilibrium.ts";
import type { Prepared } from "./prepared.ts";
import { solveMovements, type Movement } from "./solve-movement.ts";
import { addTimes, largest } from "./vectors.ts";

type Combo = Readonly<Record<string, number>>;

/** Load cases of a building, each solved for once with every bearing closed: combinations of them are sums. */
export class ClosedCases {
  private readonly building: BuildingSystem;
  private readonly closed: Prepared;
  private readonly loads = new Map<string, CombinedLoads>();
  private readonly moved = new Map<string, Movement>();
  private readonly sums = new WeakMap<Combo, Movement>();
  /** Cases in which anything is given to move. */
  private readonly settles = new Set<CombinedLoads>();
  private readonly summed = new WeakMap<Combo, CombinedLoads>();

  constructor(building: BuildingSystem, closed: Prepared) {
    this.building = building;
    this.closed = closed;
  }

  /** Loads of a combination, cases added in the order in which it names them. */
  loadsOf(combo: Combo): CombinedLoads {
    const known = this.summed.get(combo) ?? this.sumLoads(combo);
    this.summed.set(combo, known);
    return known;
  }

  private sumLoads(combo: Combo): CombinedLoads {
    const parts = partsOf(combo).map(([name, factor]) => ({ load: this.loadOf(name), factor }));
    const freedoms = this.closed.equationOf.length;
    const [forces, settlement] = [new Float64Array(freedoms), new Float64Array(freedoms)];
    for (const { load, factor } of parts) {
      addTimes(forces, load.forces, factor);
      if (this.settles.has(load)) addTimes(settlement, load.settlement, factor);
    }
    let onMembers: CombinedLoads["onMembers"] | undefined;
    return {
      forces,
      settlement,
      get onMembers() {
        return (onMembers ??= membersLoaded(parts));
      },
      unresisted: [...new Set(parts.flatMap(({ load }) => load.unresisted))],
      get actions() {
        return parts.flatMap(({ load, factor }) => load.actions.map((action) => scaled(action, factor)));
      },
    };
  }

  /** Movements under combinations with every bearing closed; each has the bits it would have by itself. */
  movementsUnder(combos: readonly Combo[], loads: readonly CombinedLoads[]): Movement[] {
    const asked = combos.flatMap((combo, s) => (this.sums.has(combo) ? [] : [s]));
    const [fresh, on] = [pick(combos, asked), pick(loads, asked)];
    this.solveMissing(fresh);
    const solved = solveMovements(
      this.closed,
      on,
      fresh.map((combo) => this.sumOf(combo)),
    );
    fresh.forEach((combo, s) => this.sums.set(combo, solved[s] ?? NOWHERE));
    return combos.map((combo) => this.sums.get(combo) ?? NOWHERE);
  }

  private sumOf(combo: Combo): Float64Array {
    const sum = new Float64Array(this.closed.equationOf.length);
    for (const [name, factor] of partsOf(combo)) addTimes(sum, this.moved.get(name)?.movement ?? NONE, factor);
    return sum;
  }

  private solveMissing(combos: readonly Combo[]): void {
    const names = [...new Set(combos.flatMap((combo) => partsOf(combo).map(([name]) => name)))];
    const missing = names.filter((name) => !this.moved.has(name));
    const solved = solveMovements(
      this.closed,
      missing.map((name) => this.loadOf(name)),
    );
    missing.forEach((name, n) => this.moved.set(name, solved[n] ?? NOWHERE));
  }

  private loadOf(name: string): CombinedLoads {
    const known = this.loads.get(name);
    if (known !== undefined) return known;
    const load = buildingLoads(this.building, { [name]: 1 });
    this.loads.set(name, load);
    if (largest(load.settlement) > 0) this.settles.add(load);
    return load;
  }
}

const NONE = new Float64Array(0);
const NOWHERE: Movement = { movement: NONE, answered: NONE };

const pick = <T>(all: readonly T[], places: readonly number[]): T[] =>
  places.flatMap((n) => {
    const one = all[n];
    return one === undefined ? [] : [one];
  });

const partsOf = (combo: Combo): [string, number][] => Object.entries(combo).filter(([, factor]) => factor !== 0);

function membersLoaded(parts: readonly { readonly load: CombinedLoads; readonly factor: number }[]) {
  const sum = new Map<string, readonly [number, number, number]>();
  for (const { load, factor } of parts)
    for (const [id, [x, y, z]] of load.onMembers) {
      const [a, b, c] = sum.get(id) ?? [0, 0, 0];
      sum.set(id, [a + factor * x, b + factor * y, c + factor * z]);
    }
  return sum;
}

const scaled = ({ place, force, moment }: Action, factor: number): Action => ({
  place,
  force: [force[0] * factor, force[1] * factor, force[2] * factor],
  moment: [moment[0] * factor, moment[1] * factor, moment[2] * factor],
});
