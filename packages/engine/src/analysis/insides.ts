import type { CondensedUnit } from "./building-system.ts";
import { recoverUnit, type Solved, type UnitSolution } from "./recover-unit.ts";

/**
 * The insides of a building's containers, recovered when asked for. Who asks twice running for the same container asks on for
 * all combinations, so the next few are recovered together; the last of them stay at hand.
 */
export class Insides {
  private readonly units: ReadonlyMap<string, CondensedUnit>;
  private readonly solved: readonly Solved[];
  private last: { readonly id: string; readonly from: number; readonly recovered: readonly UnitSolution[] } | undefined;

  constructor(units: ReadonlyMap<string, CondensedUnit>, solved: readonly Solved[]) {
    this.units = units;
    this.solved = solved;
  }

  of(id: string, side: number): UnitSolution {
    const { last } = this;
    const known = last?.id === id ? last.recovered[side - last.from] : undefined;
    if (known !== undefined) return known;
    const unit = this.units.get(id);
    if (unit === undefined) throw new Error(`the building has no container "${id}"`);
    const recovered = recoverUnit(unit, this.solved.slice(side, side + (last?.id === id ? AT_ONCE : 1)));
    this.last = { id, from: side, recovered };
    return recovered[0] ?? missing();
  }
}

/** So many load vectors stay near the processor (measured). */
const AT_ONCE = 16;

function missing(): never {
  throw new Error("each load vector has its inside");
}
