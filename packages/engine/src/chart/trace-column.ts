import type { Verdict } from "@cornerway/schema";
import { verdictRank } from "../marks/verdicts-of.ts";
import { STEP_MM, type ChartAnswer, type ChartColumn, type ChartReason, type ChartStretch } from "./chart.ts";
import { monotoneRuns, verdicts, type LastOf } from "./monotone-runs.ts";
import { tracedRuns, useOf, type AnswerAt, type Hint, type Run } from "./traced-runs.ts";

/** Narrowest opening of a chart, mm: the least door leaf is wider. */
export const NARROWEST_MM = 300;

/** Whether no solution was needed. */
export const isForbidden = ({ kind }: ChartReason): boolean => kind === "member cut" || kind === "meets opening";

/** Widths at which a column is asked where a wider opening may fare better, mm, besides the widest that nothing forbids. */
const ASKED_MM = [NARROWEST_MM, 1200, 2400, 4800, 8000] as const;

/** What is known of a column. */
export type ColumnGround = {
  /** Those traced nearest to it: on either side where there are, else both on one. */
  readonly near: readonly ChartColumn[];
  /** Where a wider opening is never cheaper: the best verdict of any width. */
  readonly easiest?: Verdict;
};

/** One column: widths from the narrowest to the widest that stays on the face. */
export function tracedColumn(
  centreMm: number,
  lengthMm: number,
  answerOf: (widthMm: number) => ChartAnswer,
  forbidden: (widthMm: number) => ChartAnswer | undefined,
  ground: ColumnGround,
): ChartColumn {
  const mostMm = Math.floor((2 * Math.min(centreMm, lengthMm - centreMm)) / STEP_MM) * STEP_MM;
  const widths = stepsTo(mostMm);
  const free = widths.filter((widthMm) => forbidden(widthMm) === undefined);
  const widest = free.at(-1);
  const runs = widest === undefined ? [] : freeRuns(centreMm, widest, (step) => answerOf(step * STEP_MM), ground);
  const solved = runs.map(({ from, to, answer }): ChartStretch => ({
    ...{ fromMm: from * STEP_MM, toMm: to * STEP_MM },
    ...answer,
  }));
  return { centreMm, mostMm, stretches: [...solved, ...barred(widths.slice(free.length), forbidden)] };
}

/** Up to the widest that nothing forbids, mm. */
function freeRuns(centreMm: number, widest: number, answerAt: AnswerAt, { near, easiest }: ColumnGround): Run[] {
  const about = nearest(near, centreMm);
  if (easiest !== undefined)
    return monotoneRuns([NARROWEST_MM / STEP_MM, widest / STEP_MM], answerAt, easiest, lastSteps(about, centreMm));
  const asked = [...ASKED_MM.filter((widthMm) => widthMm < widest), widest];
  const steps = asked.map((widthMm) => widthMm / STEP_MM);
  return tracedRuns(steps, answerAt, hintsFrom(about, centreMm));
}

const nearest = (near: readonly ChartColumn[], centreMm: number): readonly ChartColumn[] =>
  near.toSorted((one, other) => Math.abs(one.centreMm - centreMm) - Math.abs(other.centreMm - centreMm));

/** Where each verdict would end were it to go on as between two columns; as in the one where there is but one. */
function lastSteps([a, b]: readonly ChartColumn[], centreMm: number): LastOf[] {
  if (a === undefined) return [];
  const share = b === undefined ? 0 : (centreMm - a.centreMm) / (b.centreMm - a.centreMm);
  return verdicts.map((verdict) => {
    const [here, there] = [lastStep(a, verdict), b === undefined ? 0 : lastStep(b, verdict)];
    return { verdict, step: Math.round(here + share * (there - here)) };
  });
}

/** The last that is no worse and that nothing forbids; the one before the first where there is none. */
function lastStep({ stretches }: ChartColumn, verdict: Verdict): number {
  const no = stretches.findLast(
    (stretch) => !isForbidden(stretch.why) && verdictRank[stretch.verdict] <= verdictRank[verdict],
  );
  return (no?.toMm ?? NARROWEST_MM - STEP_MM) / STEP_MM;
}

/** Where stretches end, between those of two columns alike, or as in the nearest. */
function hintsFrom([a, b]: readonly ChartColumn[], centreMm: number): Hint[] {
  if (a === undefined) return [];
  const alike =
    b?.stretches.length === a.stretches.length &&
    a.stretches.every(({ verdict }, n) => b.stretches[n]?.verdict === verdict);
  const share = alike ? (centreMm - a.centreMm) / (b.centreMm - a.centreMm) : 0;
  return a.stretches.map((stretch, n) => {
    const other = b?.stretches[n]?.toMm ?? stretch.toMm;
    return {
      step: Math.round((stretch.toMm + share * (other - stretch.toMm)) / STEP_MM),
      use: useOf(stretch),
    };
  });
}

function stepsTo(mostMm: number): number[] {
  const widths: number[] = [];
  for (let widthMm = NARROWEST_MM; widthMm <= mostMm; widthMm += STEP_MM) widths.push(widthMm);
  return widths;
}

/** Whatever is wider than what is forbidden is forbidden too, though perhaps by something else. */
function barred(widths: readonly number[], forbidden: (widthMm: number) => ChartAnswer | undefined): ChartStretch[] {
  const stretches: ChartStretch[] = [];
  for (const widthMm of widths) {
    const answer = forbidden(widthMm);
    const last = stretches.at(-1);
    if (answer === undefined) throw new RangeError(`a width of ${widthMm} mm is free beyond one that is not`);
    if (last !== undefined && JSON.stringify(last.why) === JSON.stringify(answer.why))
      stretches[stretches.length - 1] = { ...last, toMm: widthMm };
    else stretches.push({ fromMm: widthMm, toMm: widthMm, ...answer });
  }
  return stretches;
}
