import type { LoadBasis } from "../analysis/load-basis.ts";
import { FORCES_OF_ENDS, type ForceLayout } from "./inner-forces.ts";

/** Forces told of each line: three forces and three moments at its first end, three forces at its second; local axes. */
const TOLD_OF_LINE = 9;
/** Those of them that are worked out: the others follow from equilibrium of the line. */
const WORKED_OUT = 6;

/**
 * What is told of the lines and sheets of one container, from rows that are worked out: nine forces of each line, then the flow of
 * each sheet. A line loaded between its ends hands over at its second what both take of that load, less what its first takes.
 */
export class ToldForces {
  /** Rows that movements cause, and all that are worked out: those of both ends of loaded lines stand behind. */
  readonly rowsMoved: number;
  readonly rows: number;
  readonly length: number;
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  private readonly lines: number;
  /** Places of lines loaded between their ends, in the order of their rows. */
  private readonly loaded: Int32Array;

  constructor({ lines, panels, length }: ForceLayout, { slots }: LoadBasis) {
    this.lines = lines.size;
    this.rowsMoved = length;
    this.rows = length + FORCES_OF_ENDS * slots.lines.size;
    this.length = TOLD_OF_LINE * lines.size + panels.size;
    this.at = (id) => ((lines.get(id) ?? missing(id)) / WORKED_OUT) * TOLD_OF_LINE;
    this.panelAt = (id) => (panels.get(id) ?? missing(id)) + this.length - length;
    this.loaded = Int32Array.from(slots.lines.keys(), this.at);
  }

  /** Writes all that is told, from all rows that are worked out. */
  write(worked: Float64Array, told: Float64Array): void {
    let from = 0;
    let to = 0;
    for (let line = 0; line < this.lines; line++) {
      for (let n = 0; n < WORKED_OUT; n++) told[to + n] = worked[from + n] ?? 0;
      for (let c = 0; c < FORCES_OF_ENDS; c++) told[to + WORKED_OUT + c] = -(worked[from + c] ?? 0);
      from += WORKED_OUT;
      to += TOLD_OF_LINE;
    }
    while (to < told.length) told[to++] = worked[from++] ?? 0;
    for (const line of this.loaded)
      for (let c = WORKED_OUT; c < TOLD_OF_LINE; c++) told[line + c] = (told[line + c] ?? 0) + (worked[from++] ?? 0);
  }
}

function missing(id: string): never {
  throw new RangeError(`the model has no line or sheet ${id}`);
}
