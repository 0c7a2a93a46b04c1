import { RecentlyMade } from "../numerics/recently-made.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";

/** What is checked inside the last containers asked for: parts know their strengths, and an edit changes those of one. */
export class PartsMade {
  private readonly ofUnits = new WeakMap<StrengthBasis, RecentlyMade<readonly StrengthPart[]>>();
  private readonly ofStretches = new WeakMap<StrengthBasis, RecentlyMade<readonly StrengthPart[]>>();

  /** `key`: plain data, all that they hang on. */
  take(basis: StrengthBasis, key: unknown, make: Make): readonly StrengthPart[] {
    return takeFrom(this.ofUnits, SETS_KEPT, basis, key, make);
  }

  /** Of one stretch of a member: an edit leaves most stretches of its container. */
  takeStretch(basis: StrengthBasis, key: unknown, make: Make): readonly StrengthPart[] {
    return takeFrom(this.ofStretches, STRETCHES_KEPT, basis, key, make);
  }
}

type Make = () => readonly StrengthPart[];

function takeFrom(
  made: WeakMap<StrengthBasis, RecentlyMade<readonly StrengthPart[]>>,
  most: number,
  basis: StrengthBasis,
  key: unknown,
  make: Make,
): readonly StrengthPart[] {
  const known = made.get(basis) ?? new RecentlyMade<readonly StrengthPart[]>(most);
  made.set(basis, known);
  return known.take(JSON.stringify(key), make);
}

/** Two of each container: what is inside it, and its walls. */
const SETS_KEPT = 256;
/** Of a dozen containers. */
const STRETCHES_KEPT = 1024;

/** What was made for whoever solves with this memory. */
export function partsMadeWith(memory: object): PartsMade {
  const known = byMemory.get(memory) ?? new PartsMade();
  byMemory.set(memory, known);
  return known;
}

const byMemory = new WeakMap<object, PartsMade>();
