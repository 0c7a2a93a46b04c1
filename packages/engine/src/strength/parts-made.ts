import { RecentlyMade } from "../numerics/recently-made.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";

/** What is checked inside the last containers asked for: parts know their strengths, and an edit changes those of one. */
export class PartsMade {
  private readonly byBasis = new WeakMap<StrengthBasis, RecentlyMade<readonly StrengthPart[]>>();

  /** `key`: plain data, all that they hang on. */
  take(basis: StrengthBasis, key: unknown, make: () => readonly StrengthPart[]): readonly StrengthPart[] {
    const known = this.byBasis.get(basis) ?? new RecentlyMade<readonly StrengthPart[]>(SETS_KEPT);
    this.byBasis.set(basis, known);
    return known.take(JSON.stringify(key), make);
  }
}

/** Two of each container: what is inside it, and its walls. */
const SETS_KEPT = 256;

/** What was made for whoever solves with this memory. */
export function partsMadeWith(memory: object): PartsMade {
  const known = byMemory.get(memory) ?? new PartsMade();
  byMemory.set(memory, known);
  return known;
}

const byMemory = new WeakMap<object, PartsMade>();
