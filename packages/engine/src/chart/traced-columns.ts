import type { Verdict } from "@cornerway/schema";
import type { ChartAnswer, ChartColumn, ChartSide, ChartStretch } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import type { PlaceJudge } from "./judge-place.ts";
import { isForbidden, tracedColumn } from "./trace-column.ts";

/** The columns of a chart as far as they are traced. */
export class TracedColumns {
  private readonly judge: PlaceJudge;
  private readonly side: ChartSide;
  private readonly isPlain: boolean;
  private readonly byCentre = new Map<number, ChartColumn>();

  constructor(judge: PlaceJudge, side: ChartSide) {
    this.judge = judge;
    this.side = side;
    this.isPlain = isPlain(side);
  }

  get sorted(): ChartColumn[] {
    return [...this.byCentre.values()].toSorted((a, b) => a.centreMm - b.centreMm);
  }

  /** Columns that were traced elsewhere. */
  take(columns: readonly ChartColumn[]): void {
    for (const column of columns) this.byCentre.set(column.centreMm, column);
  }

  /**
   * Both sides of every boundary, and where something works, are looked at under all the sets that decide; where that moves a
   * boundary, so is each width that is asked from then on.
   */
  trace(centreMm: number): ChartColumn {
    for (let isMoved = false; ; isMoved = true) {
      const column = isMoved ? this.surelyAt(centreMm) : this.at(centreMm);
      this.byCentre.set(centreMm, column);
      const told = [...boundariesOf(column), ...widestOf(column)];
      if (told.every(({ place, verdict }) => this.judge.settled(place).verdict === verdict)) return column;
    }
  }

  /** The same with both sides of every boundary confirmed: what decides there is looked at from then on. */
  traceSurely(centreMm: number): ChartColumn {
    for (;;) {
      const column = this.trace(centreMm);
      const told = boundariesOf(column);
      if (told.every(({ place, verdict }) => this.judge.confirmed(place).verdict === verdict)) return column;
    }
  }

  /** A column that is no column of the chart. */
  at(centreMm: number): ChartColumn {
    return this.asked(centreMm, (place) => this.judge.answer(place));
  }

  /** The same, from what was asked before and surely answered widths between. */
  private surelyAt(centreMm: number): ChartColumn {
    return this.asked(centreMm, (place) => this.judge.answered(place) ?? this.judge.settled(place));
  }

  private asked(centreMm: number, answerAt: (place: Place) => ChartAnswer): ChartColumn {
    return tracedColumn(
      centreMm,
      this.side.lengthMm,
      (widthMm) => answerAt({ centreMm, widthMm }),
      (widthMm) => this.judge.forbidden({ centreMm, widthMm }),
      { near: this.near(centreMm), ...(this.isPlain && { easiest: this.judge.easiest(centreMm) }) },
    );
  }

  /**
   * Confirms the widest opening of each verdict that works, which people are told of a region, and traces the columns anew
   * that have that verdict where it is not confirmed, until all are.
   */
  *confirmed(): Generator<ChartColumn> {
    for (;;) {
      const wrong = widestThatWork(this.sorted).filter(
        ({ place, verdict }) => this.judge.confirmed(place).verdict !== verdict,
      );
      if (wrong.length === 0) return;
      const verdicts = new Set<Verdict>(wrong.map(({ verdict }) => verdict));
      const affected = this.sorted.filter(({ stretches }) => stretches.some(({ verdict }) => verdicts.has(verdict)));
      for (const { centreMm } of affected) yield this.trace(centreMm);
    }
  }

  /**
   * The nearest on either side; where one has none, that which lies as far from the other end, or two; or the one that lies there,
   * traced before.
   */
  private near(centreMm: number): ChartColumn[] {
    const known = this.byCentre.get(centreMm);
    if (known !== undefined) return [known];
    const across = this.byCentre.get(this.side.lengthMm - centreMm);
    const { sorted } = this;
    const before = sorted.filter((column) => column.centreMm < centreMm).slice(-2);
    const after = sorted.filter((column) => column.centreMm > centreMm).slice(0, 2);
    if (across !== undefined && before.length * after.length === 0) return [{ ...across, centreMm }];
    if (before.length === 0) return after;
    return after.length === 0 ? before : [...before.slice(-1), ...after.slice(0, 1)];
  }
}

/** Whether nothing is cut in the wall already and all that bears is at its corners: then wider is never cheaper. */
export const isPlain = ({ others, bearings, sheet }: ChartSide): boolean =>
  others.length === 0 && bearings.every(({ uMm }) => uMm < sheet.u0 || uMm > sheet.u1);

/** Both sides of where the answer changes, but for what is forbidden. */
function boundariesOf({ centreMm, stretches }: ChartColumn): Told[] {
  return stretches.flatMap(({ toMm, verdict, why }, n) => {
    const next = stretches[n + 1];
    if (next === undefined || isForbidden(next.why) || isForbidden(why)) return [];
    return [
      { place: { centreMm, widthMm: toMm }, verdict },
      { place: { centreMm, widthMm: next.fromMm }, verdict: next.verdict },
    ];
  });
}

/** The widest of each stretch that works. */
const widestOf = ({ centreMm, stretches }: ChartColumn): Told[] =>
  stretches.flatMap(({ why, toMm, verdict }) =>
    why.kind === "within" ? [{ place: { centreMm, widthMm: toMm }, verdict }] : [],
  );

type Told = { readonly place: Place; readonly verdict: Verdict };

function widestThatWork(columns: readonly ChartColumn[]): Told[] {
  const widest = new Map<Verdict, { readonly centreMm: number; readonly stretch: ChartStretch }>();
  for (const { centreMm, stretches } of columns)
    for (const stretch of stretches)
      if (stretch.why.kind === "within" && stretch.toMm > (widest.get(stretch.verdict)?.stretch.toMm ?? 0))
        widest.set(stretch.verdict, { centreMm, stretch });
  return [...widest].map(([verdict, { centreMm, stretch }]) => ({
    place: { centreMm, widthMm: stretch.toMm },
    verdict,
  }));
}
