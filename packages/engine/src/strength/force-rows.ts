import type { BuildingCombination } from "../building.ts";
import { addRowsTimesTwo } from "../numerics/rows-times.ts";

/** A run as a container sees it: the movements of its bearing points, and how much of each load of its basis acts. */
export type SeenRun = {
  readonly solved: BuildingCombination;
  readonly moved: () => Float64Array;
  readonly shares: () => Float64Array;
};

/** Some of the forces inside a container, each a row over the movements of its bearing points and a row over its loads. */
export class ForceRows {
  private readonly byMovement: Float64Array;
  private readonly byLoad: Float64Array;
  /** Of two runs at a time: whoever asks for one asks for the next one next. */
  private readonly sums: readonly [Float64Array, Float64Array];
  private held: readonly (BuildingCombination | undefined)[] = [];

  constructor(byMovement: Float64Array, byLoad: Float64Array, rows: number) {
    this.byMovement = byMovement;
    this.byLoad = byLoad;
    this.sums = [new Float64Array(rows), new Float64Array(rows)];
  }

  /** Valid until asked for another run; `next` is the one that is asked for after it. */
  under(run: SeenRun, next: SeenRun | undefined): Float64Array {
    const known = this.held.indexOf(run.solved);
    if (known >= 0) return this.sums[known] ?? this.sums[0];
    this.held = [run.solved, next?.solved];
    const second = next ?? run;
    const [first, other] = this.sums;
    first.fill(0);
    other.fill(0);
    addRowsTimesTwo(this.byMovement, run.moved(), second.moved(), first, other);
    addRowsTimesTwo(this.byLoad, run.shares(), second.shares(), first, other);
    return first;
  }
}
