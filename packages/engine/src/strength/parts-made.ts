import { RecentlyMade } from "../model/recently-made.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";

/** What is checked inside the last containers asked for: parts know their strengths, and an edit changes those of one. */
export class PartsMade {
  private readonly byBasis = new WeakMap<StrengthBasis, RecentlyMade<readonly StrengthPart[]>>();

  /** `key`: all that they hang on. */
  take(basis: StrengthBasis, key: readonly string[], make: () => readonly StrengthPart[]): readonly StrengthPart[] {
    const known = this.byBasis.get(basis) ?? new RecentlyMade<readonly StrengthPart[]>(CONTAINERS);
    this.byBasis.set(basis, known);
    return known.take(JSON.stringify(key), make);
  }
}

const CONTAINERS = 128;
