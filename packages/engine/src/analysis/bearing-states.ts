import { FactorMemory } from "../numerics/factor-memory.ts";
import { flagsKey } from "../numerics/flags-key.ts";
import { OpenedBearings } from "./opened-bearings.ts";
import { prepare, type Preparation } from "./prepare.ts";
import type { Prepared } from "./prepared.ts";
import type { Responses } from "./responses.ts";
import { responsesOf } from "./responses-of.ts";
import type { ContactState, System } from "./system.ts";
import { updatedState } from "./updated-state.ts";

/** The ways from one state of the bearings to another. */
export interface BearingStates {
  /** Through a factorised state; null where that does not serve. */
  readonly updated: (from: Prepared, state: ContactState) => Preparation | null;
  /** By a factorisation of its own. */
  readonly factorised: (state: ContactState) => Preparation;
  /** What a state does when some of its bearings are held open. */
  readonly opened: (base: Prepared) => OpenedBearings;
  /** Responses of a factorised state. */
  readonly responses: (from: Prepared) => Responses;
}

/**
 * The last states stay at hand, since load vectors often leave the bearings in the same state; `memory` saves the fronts
 * that a newly factorised state leaves as they were. `respond` finds the responses of a factorised state.
 */
export function bearingStates(
  system: System,
  memory = new FactorMemory(),
  respond: (from: Prepared) => Responses = responsesOf,
): BearingStates {
  const updated = new Latest<Preparation | null>(STATES_KEPT);
  const opened = new WeakMap<Prepared, OpenedBearings>();
  const standing = new Latest<Preparation>(FACTORS_KEPT);
  const falling = new Latest<Preparation>(STATES_KEPT);
  const responsesFrom = new WeakMap<Prepared, Responses>();
  const responses = (from: Prepared): Responses => {
    const known = responsesFrom.get(from) ?? respond(from);
    responsesFrom.set(from, known);
    return known;
  };
  return {
    updated: (from, state) =>
      updated.take(keyOf(from.state) + keyOf(state), () => updatedState(from, state, responses(from))),
    factorised: (state) => {
      const key = keyOf(state);
      const known = falling.find(key) ?? standing.find(key);
      if (known !== undefined) return known;
      const made = prepare(system, state, memory);
      return (made.stable ? standing : falling).take(key, () => made);
    },
    opened: (base) => {
      const known = opened.get(base) ?? new OpenedBearings(base);
      opened.set(base, known);
      return known;
    },
    responses,
  };
}

/** Written once for each state. */
function keyOf(state: ContactState): string {
  const key = keys.get(state) ?? flagsKey(state.open) + flagsKey(state.lost);
  keys.set(state, key);
  return key;
}

const keys = new WeakMap<ContactState, string>();

/** A factorised state is large; others are a few columns. */
const FACTORS_KEPT = 4;
const STATES_KEPT = 512;

class Latest<T> {
  private readonly kept = new Map<string, T>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  take(key: string, make: () => T): T {
    const known = this.find(key);
    if (known !== undefined) return known;
    const value = make();
    this.kept.set(key, value);
    for (const oldest of this.kept.keys()) if (this.kept.size > this.most) this.kept.delete(oldest);
    return value;
  }

  find(key: string): T | undefined {
    const known = this.kept.get(key);
    if (known === undefined) return undefined;
    this.kept.delete(key);
    this.kept.set(key, known);
    return known;
  }
}
