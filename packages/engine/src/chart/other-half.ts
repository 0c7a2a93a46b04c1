import type { Scheme } from "@cornerway/schema";
import type { StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import type { ChartBasis, ChartColumn, ChartFineness, ChartRequest } from "./chart.ts";
import { startedChart } from "./started-chart.ts";
import { vectorsOf } from "./chart-basis.ts";

/** What another thread tells of its half of a chart: a column, that all are told, or that it is gone. Plain data. */
export type HalfWord = { readonly kind: "column"; readonly column: ChartColumn } | HalfTold | { readonly kind: "gone" };

export type HalfTold = {
  readonly kind: "told";
  /** Places and widths that were solved, and how many of them under every vector. */
  readonly solved: number;
  readonly confirmed: number;
  readonly vectors: ChartBasis["vectors"];
};

/** The half of a chart without its first column, a column at a time: it starts as the chart does, with that column. */
export function* tracedHalf(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness,
  basis: StrengthBasis,
  memory: StrengthMemory,
): Generator<HalfWord, void> {
  const started = startedChart(scheme, request, fineness, basis, memory);
  if (!started.accepted) return; // whoever traces the other half says why
  const { judge, columns, first, halves } = started;
  const [next] = halves.own;
  if (halves.beside.length > 0 && next !== undefined) {
    judge.confirmed(first);
    columns.traceSurely(next); // what decides there decides here, and it leads to those beside it
  }
  for (const centreMm of halves.beside) yield { kind: "column", column: columns.trace(centreMm) };
  yield { kind: "told", solved: judge.solved, confirmed: judge.confirmedPlaces, vectors: vectorsOf(judge.vectors) };
}

/** The half that is traced elsewhere, as far as it is told. */
export class OtherHalf {
  /** As they were told. */
  readonly columns: ChartColumn[] = [];
  private left: readonly number[];
  private told: HalfTold | undefined;
  private isGone = false;

  /** `centres` of its columns, mm. */
  constructor(centres: readonly number[]) {
    this.left = centres;
  }

  /** Columns that were told. */
  hear(words: readonly HalfWord[]): ChartColumn[] {
    const columns: ChartColumn[] = [];
    for (const word of words)
      if (word.kind === "gone") this.isGone = true;
      else if (word.kind === "told") this.told = word;
      else columns.push(word.column);
    this.left = this.left.filter((centreMm) => columns.every((column) => column.centreMm !== centreMm));
    this.columns.push(...columns);
    return columns;
  }

  /** Whether more will be told. */
  get isAwaited(): boolean {
    return !this.isGone && this.left.length + (this.told === undefined ? 1 : 0) > 0;
  }

  /** Centres of columns nobody will tell. */
  get missing(): readonly number[] {
    return this.isGone ? this.left : [];
  }

  get solved(): number {
    return this.told?.solved ?? 0;
  }

  get confirmed(): number {
    return this.told?.confirmed ?? 0;
  }

  get vectors(): ChartBasis["vectors"] {
    return this.told?.vectors ?? [];
  }
}
