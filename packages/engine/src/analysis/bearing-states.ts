import { FactorMemory } from "../numerics/factor-memory.ts";
import { prepare, type Preparation } from "./prepare.ts";
import type { Prepared } from "./prepared.ts";
import type { ContactState, System } from "./system.ts";
import { updatedState } from "./updated-state.ts";

/** The ways from one state of the bearings to another. */
export interface BearingStates {
  /** Through the factorisation at hand; null where that does not serve. */
  readonly updated: (base: Prepared, state: ContactState) => Prepared | null;
  /** By a factorisation of its own. */
  readonly factorised: (state: ContactState) => Preparation;
}

/**
 * The last few states stay at hand, since load vectors often leave the bearings in the same state; `memory` saves the fronts
 * that a newly factorised state leaves as they were.
 */
export function bearingStates(system: System, memory = new FactorMemory()): BearingStates {
  const updated = new Latest<Prepared | null>(UPDATES_KEPT);
  const factorised = new Latest<Preparation>(FACTORS_KEPT);
  return {
    updated: (base, state) => {
      const from = base.update?.from ?? base;
      return updated.take(`${keyOf(from.state)} ${keyOf(state)}`, () => updatedState(from, state));
    },
    factorised: (state) => factorised.take(keyOf(state), () => prepare(system, state, memory)),
  };
}

function keyOf({ open, lost }: ContactState): string {
  return `${open.join("")} ${lost.join("")}`;
}

const FACTORS_KEPT = 4;
const UPDATES_KEPT = 64;

class Latest<T> {
  private readonly kept = new Map<string, T>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  take(key: string, make: () => T): T {
    const known = this.kept.get(key);
    const value = known === undefined ? make() : known;
    this.kept.delete(key);
    this.kept.set(key, value);
    for (const oldest of this.kept.keys()) if (this.kept.size > this.most) this.kept.delete(oldest);
    return value;
  }
}
