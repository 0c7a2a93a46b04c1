import type { LoadBasis } from "../analysis/load-basis.ts";
import { FORCES_OF_ENDS, type ForceLayout } from "./inner-forces.ts";

/** Forces told of each line: three forces and three moments at its first end, three forces at its second; local axes. */
const TOLD_OF_LINE = 9;
/** Those of them that are worked out: the others follow from equilibrium of the line. */
const WORKED_OUT = 6;

/** Numbers told from rows that are worked out, those that movements cause first. */
export type Told = {
  readonly rowsMoved: number;
  readonly rows: number;
  readonly length: number;
  readonly write: (worked: Float64Array, told: Float64Array) => void;
};

/**
 * What is told of the lines of one container, nine forces of each. A line loaded between its ends hands over at its second what
 * both take of that load, less what its first takes: rows of both ends of loaded lines stand behind those of all lines.
 */
export class ToldLines implements Told {
  readonly rowsMoved: number;
  readonly rows: number;
  readonly length: number;
  readonly at: (id: string) => number;
  private readonly lines: number;
  /** Places of lines loaded between their ends, in the order of their rows. */
  private readonly loaded: Int32Array;

  constructor({ lines, panels }: ForceLayout, { slots }: LoadBasis) {
    this.lines = lines.size;
    this.rowsMoved = WORKED_OUT * lines.size;
    this.rows = this.rowsMoved + FORCES_OF_ENDS * slots.lines.size;
    this.length = TOLD_OF_LINE * lines.size;
    this.at = (id) => (((lines.get(id) ?? missing(id)) - panels.size) / WORKED_OUT) * TOLD_OF_LINE;
    this.loaded = Int32Array.from(slots.lines.keys(), this.at);
  }

  write(worked: Float64Array, told: Float64Array): void {
    let from = 0;
    let to = 0;
    for (let line = 0; line < this.lines; line++) {
      for (let n = 0; n < WORKED_OUT; n++) told[to + n] = worked[from + n] ?? 0;
      for (let c = 0; c < FORCES_OF_ENDS; c++) told[to + WORKED_OUT + c] = -(worked[from + c] ?? 0);
      from += WORKED_OUT;
      to += TOLD_OF_LINE;
    }
    for (const line of this.loaded)
      for (let c = WORKED_OUT; c < TOLD_OF_LINE; c++) told[line + c] = (told[line + c] ?? 0) + (worked[from++] ?? 0);
  }
}

/** What is told of its sheets: the flow of each, as it is worked out. */
export class ToldSheets implements Told {
  readonly rowsMoved: number;
  readonly rows: number;
  readonly length: number;
  readonly at: (id: string) => number;

  constructor({ panels }: ForceLayout) {
    this.rowsMoved = panels.size;
    this.rows = panels.size;
    this.length = panels.size;
    this.at = (id) => panels.get(id) ?? missing(id);
  }

  write(worked: Float64Array, told: Float64Array): void {
    told.set(worked.subarray(0, this.rows));
  }
}

/** Both together: what is told of lines, then of sheets. */
export class ToldForces {
  readonly rows: number;
  readonly length: number;
  readonly at: (id: string) => number;
  readonly panelAt: (id: string) => number;
  private readonly lines: ToldLines;
  private readonly sheets: ToldSheets;

  constructor(layout: ForceLayout, basis: LoadBasis) {
    const [lines, sheets] = [new ToldLines(layout, basis), new ToldSheets(layout)];
    [this.lines, this.sheets] = [lines, sheets];
    this.rows = sheets.rows + lines.rows;
    this.length = lines.length + sheets.length;
    this.at = lines.at;
    this.panelAt = (id) => lines.length + sheets.at(id);
  }

  /** Writes all that is told, from all rows that are worked out. */
  write(worked: Float64Array, told: Float64Array): void {
    this.lines.write(worked.subarray(this.sheets.rows), told);
    this.sheets.write(worked, told.subarray(this.lines.length));
  }
}

function missing(id: string): never {
  throw new RangeError(`the model has no line or sheet ${id}`);
}
