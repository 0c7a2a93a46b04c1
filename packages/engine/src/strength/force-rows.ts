import { addRowsTimes, VECTORS_AT_ONCE, type FourSums } from "../numerics/rows-times.ts";

/** A run as a container sees it: the movements of its bearing points, and how much of each load of its basis acts. */
export type SeenRun = {
  /** Tells it from every other. */
  readonly token: object;
  readonly moved: () => Float64Array;
  readonly shares: () => Float64Array;
};

/** Some of the forces inside a container, each a row over the movements of its bearing points and a row over its loads. */
export class ForceRows {
  private readonly byMovement: Float64Array;
  private readonly byLoad: Float64Array;
  /** Of four runs each, the one asked last first: whoever goes through the runs may look back at one of them each time. */
  private blocks: readonly [Block, Block];

  constructor(byMovement: Float64Array, byLoad: Float64Array, rows: number) {
    this.byMovement = byMovement;
    this.byLoad = byLoad;
    this.blocks = [emptyBlock(rows), emptyBlock(rows)];
  }

  /** Of the blocks; the rows belong to whoever gave them. */
  get bytes(): number {
    return this.blocks.reduce((sum, { sums }) => sum + sums.reduce((own, { byteLength }) => own + byteLength, 0), 0);
  }

  /** What is at hand of this run. */
  known(token: object): Float64Array | undefined {
    const [last] = this.blocks;
    const known = last.runs.indexOf(token);
    return known < 0 ? undefined : last.sums[known];
  }

  /** Valid until asked for another run; `after` gives the runs that are asked for after it, 1, 2 and 3 places on. */
  under(run: SeenRun, after: (places: number) => SeenRun | undefined): Float64Array {
    const [last, other] = this.blocks;
    const known = last.runs.indexOf(run.token);
    if (known >= 0) return last.sums[known] ?? last.sums[0];
    this.blocks = [other, last];
    const before = other.runs.indexOf(run.token);
    if (before >= 0) return other.sums[before] ?? other.sums[0];
    this.fill(other, [run, after(1), after(2), after(3)]);
    return other.sums[0];
  }

  private fill(block: Block, runs: readonly (SeenRun | undefined)[]): void {
    block.runs = runs.map((run) => run?.token);
    for (const sum of block.sums) sum.fill(0);
    addRowsTimes(this.byMovement, sideBySide(runs.map((run) => run?.moved())), block.sums);
    addRowsTimes(this.byLoad, sideBySide(runs.map((run) => run?.shares())), block.sums);
  }
}

type Block = { runs: readonly (object | undefined)[]; readonly sums: FourSums };

const emptyBlock = (rows: number): Block => ({
  runs: [],
  sums: [new Float64Array(rows), new Float64Array(rows), new Float64Array(rows), new Float64Array(rows)],
});

/** Number by number; zeros where there is no run. */
function sideBySide(vectors: readonly (Float64Array | undefined)[]): Float64Array {
  const [first] = vectors;
  const together = new Float64Array((first?.length ?? 0) * VECTORS_AT_ONCE);
  vectors.forEach((vector, v) => vector?.forEach((value, n) => (together[n * VECTORS_AT_ONCE + v] = value)));
  return together;
}
