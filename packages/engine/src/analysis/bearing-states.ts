import type { FactorMemory } from "../numerics/factor-memory.ts";
import { prepare, type Preparation } from "./prepare.ts";
import type { ContactState, System } from "./system.ts";

/**
 * Factorises the system in the states asked for; the last few stay at hand, since load vectors often leave the bearings in
 * the same state, and `memory` saves the fronts that a new state leaves as they were.
 */
export function rememberedStates(system: System, memory: FactorMemory): (state: ContactState) => Preparation {
  const kept = new Map<string, Preparation>();
  return (state) => {
    const key = `${state.open.join("")} ${state.lost.join("")}`;
    const preparation = kept.get(key) ?? prepare(system, state, memory);
    kept.delete(key);
    kept.set(key, preparation);
    for (const oldest of kept.keys()) if (kept.size > KEPT) kept.delete(oldest);
    return preparation;
  };
}

const KEPT = 4;
