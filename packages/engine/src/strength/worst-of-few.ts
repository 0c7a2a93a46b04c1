import type { CombinationLevel } from "../loads/load-combination.ts";
import { exceeds, type Governing } from "./screen.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";

/** What governs a part among few runs, apart for those that stand as drawn and those that need something held. */
export type WorstOfFew = { readonly part: StrengthPart; readonly asDrawn?: Governing; readonly heldDown?: Governing };

/**
 * The worst of each part of one owner among runs of several sets, as `screen` finds it, without what each set asks by itself: a use
 * that no run before it was below is not worked out, nor one of what is sure of a part within its strength, which is not told.
 */
export function worstOfFew(
  parts: readonly StrengthPart[],
  runsOfSets: readonly (readonly SolvedRun[])[],
): WorstOfFew[] {
  const worsts = parts.map((part) => new Worst(part));
  const at = (level: CombinationLevel) => worsts.filter(({ part }) => part.level === level);
  const heldAt = { strength: at("strength"), allowable: at("allowable") };
  // forces inside a container are worked out run by run for all its parts
  for (const runs of runsOfSets)
    for (const solved of runs) for (const worst of heldAt[solved.run.level]) worst.look(solved);
  return worsts.filter(({ asDrawn, heldDown }) => asDrawn !== undefined || heldDown !== undefined);
}

class Worst implements WorstOfFew {
  readonly part: StrengthPart;
  asDrawn?: Governing;
  heldDown?: Governing;
  private readonly least: number;

  constructor(part: StrengthPart) {
    this.part = part;
    this.least = part.sureOf === undefined ? 0 : WITHIN_STRENGTH;
  }

  look(solved: SolvedRun): void {
    const isHeld = solved.held.length > 0;
    const known = isHeld ? this.heldDown : this.asDrawn;
    const above = known?.use ?? this.least;
    const use = this.part.use(solved, above);
    if (Number.isNaN(use)) throw new Error(`${this.part.id} has no utilisation in ${solved.run.id}`);
    if (use <= above || !exceeds(use, known?.use ?? 0)) return;
    if (isHeld) this.heldDown = { use, solved };
    else this.asDrawn = { use, solved };
  }
}

/** So far below its strength that no run just above it counts as the same as one that is not looked at. */
const WITHIN_STRENGTH = 1 - 1e-6;
