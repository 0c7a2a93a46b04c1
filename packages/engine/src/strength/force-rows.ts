import { addRowsTimes, VECTORS_AT_ONCE, type FourSums } from "../numerics/rows-times.ts";
import { Scratch } from "../numerics/scratch.ts";
import type { Told } from "./told-forces.ts";

/** A run as a container sees it: the movements of its bearing points, and how much of each load of its basis acts. */
export type SeenRun = {
  /** Tells it from every other. */
  readonly token: object;
  readonly moved: () => Float64Array;
  readonly shares: () => Float64Array;
};

/** Forces inside a container, each a row over the movements of its bearing points and a row over its loads. */
export class ForceRows {
  private readonly byMovement: Float64Array;
  private readonly byLoad: Float64Array;
  private readonly told: Told;
  /** Of four runs each, the one asked last first: whoever goes through the runs may look back at one of them each time. */
  private blocks: readonly [Block, Block];

  /** `byLoad` may have rows behind those that movements cause as well. */
  constructor(byMovement: Float64Array, byLoad: Float64Array, told: Told) {
    this.byMovement = byMovement;
    this.byLoad = byLoad;
    this.told = told;
    this.blocks = [emptyBlock(told.length), emptyBlock(told.length)];
  }

  /** Of the blocks; the rows belong to whoever gave them. */
  get bytes(): number {
    return this.blocks.reduce((sum, { told }) => sum + told.reduce((own, { byteLength }) => own + byteLength, 0), 0);
  }

  /** What is at hand of this run. */
  known(token: object): Float64Array | undefined {
    const [last] = this.blocks;
    const known = last.runs.indexOf(token);
    return known < 0 ? undefined : last.told[known];
  }

  /** Valid until asked for another run; `after` gives the runs that are asked for after it, 1, 2 and 3 places on. */
  under(run: SeenRun, after: (places: number) => SeenRun | undefined): Float64Array {
    const [last, other] = this.blocks;
    const known = last.runs.indexOf(run.token);
    if (known >= 0) return last.told[known] ?? last.told[0];
    this.blocks = [other, last];
    const before = other.runs.indexOf(run.token);
    if (before >= 0) return other.told[before] ?? other.told[0];
    this.fill(other, [run, after(1), after(2), after(3)]);
    return other.told[0];
  }

  private fill(block: Block, runs: FourRuns): void {
    block.runs = runs.map((run) => run?.token);
    const { rows, rowsMoved } = this.told;
    const sums = fourSums((n) => SUMS[n].room(rows).subarray(0, rows).fill(0));
    const moved = fourSums((n) => sums[n].subarray(0, rowsMoved));
    addRowsTimes(
      this.byMovement,
      sideBySide(runs, (run) => run.moved()),
      moved,
    );
    addRowsTimes(
      this.byLoad,
      sideBySide(runs, (run) => run.shares()),
      sums,
    );
    sums.forEach((sum, n) => this.told.write(sum, block.told[n] ?? block.told[0]));
  }
}

type FourRuns = readonly (SeenRun | undefined)[];
type Block = { runs: readonly (object | undefined)[]; readonly told: FourSums };

const fourSums = (make: (n: 0 | 1 | 2 | 3) => Float64Array): FourSums => [make(0), make(1), make(2), make(3)];
const emptyBlock = (length: number): Block => ({ runs: [], told: fourSums(() => new Float64Array(length)) });

/** Room for sums on their way to what is told of them, and for what they are multiplied by. */
const SUMS = [new Scratch(), new Scratch(), new Scratch(), new Scratch()] as const;
const TOGETHER = new Scratch();

/** Number by number, valid until asked again; zeros where there is no run. */
function sideBySide(runs: FourRuns, vectorOf: (run: SeenRun) => Float64Array): Float64Array {
  const vectors = runs.map((run) => run && vectorOf(run));
  const count = (vectors[0]?.length ?? 0) * VECTORS_AT_ONCE;
  const together = TOGETHER.room(count).subarray(0, count);
  for (let v = 0; v < VECTORS_AT_ONCE; v++) {
    const vector = vectors[v];
    if (vector === undefined) for (let at = v; at < count; at += VECTORS_AT_ONCE) together[at] = 0;
    else for (let n = 0, at = v; at < count; n++, at += VECTORS_AT_ONCE) together[at] = vector[n] ?? 0;
  }
  return together;
}
