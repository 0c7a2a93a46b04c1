import { STEP_MM, type ChartAnswer, type ChartColumn, type ChartStretch } from "./chart.ts";

/** Answers along one line of places, by whole steps. */
export type AnswerAt = (step: number) => ChartAnswer;

/** Steps with the same verdict, first and last; `answer` is that of the last. */
export type Run = { readonly from: number; readonly to: number; readonly answer: ChartAnswer };

/**
 * Runs of one verdict from the first step to the last. The steps given are asked; between two that differ the change is closed
 * in on until it lies between neighbours. Between two that agree nothing else is looked for. `hints`: the last step before
 * where a change may lie.
 */
export function tracedRuns(steps: readonly number[], answerAt: AnswerAt, hints: readonly number[] = []): Run[] {
  const asked = steps.map((step) => ({ step, answer: answerAt(step) }));
  const points = asked.flatMap((point, n) => {
    const next = asked[n + 1];
    return next === undefined ? [point] : [point, ...between(point, next, answerAt, hints)];
  });
  const runs: { from: number; to: number; answer: ChartAnswer }[] = [];
  for (const { step, answer } of points) {
    const last = runs.at(-1);
    if (last?.answer.verdict === answer.verdict) Object.assign(last, { to: step, answer });
    else runs.push({ from: step, to: step, answer });
  }
  return runs;
}

type Point = { readonly step: number; readonly answer: ChartAnswer };

/** `reach`: how far from the last step asked the change is looked for next, where that step was hinted at. */
function between(low: Point, high: Point, answerAt: AnswerAt, hints: readonly number[], reach?: Reach): Point[] {
  if (high.step - low.step <= 1 || low.answer.verdict === high.answer.verdict) return [];
  const hint = hints.find((one) => one > low.step && one < high.step);
  const guess = nextStep(low, high);
  const near =
    reach && (reach.from === "low" ? Math.min(low.step + reach.by, guess) : Math.max(high.step - reach.by, guess));
  const step = near ?? hint ?? guess;
  const middle = { step, answer: answerAt(step) };
  const by = near === undefined ? 1 : 2 * (reach?.by ?? 1);
  const hinted = near !== undefined || hint !== undefined;
  return [
    ...between(low, middle, answerAt, hints, hinted && reach?.from !== "low" ? { from: "high", by } : undefined),
    middle,
    ...between(middle, high, answerAt, hints, hinted && reach?.from !== "high" ? { from: "low", by } : undefined),
  ];
}

type Reach = { readonly from: "low" | "high"; readonly by: number };

/** Where the use would reach 1 were its root to grow evenly, kept off the ends; halfway where nothing tells. */
function nextStep(low: Point, high: Point): number {
  const [a, b] = [Math.sqrt(useOf(low.answer)), Math.sqrt(useOf(high.answer))];
  const crosses = Number.isFinite(a) && Number.isFinite(b) && a < 1 !== b < 1;
  const share = crosses && high.step - low.step > FEW_STEPS ? (1 - a) / (b - a) : 1 / 2;
  const step = Math.round(low.step + Math.min(MOST_SHARE, Math.max(1 - MOST_SHARE, share)) * (high.step - low.step));
  return Math.min(high.step - 1, Math.max(low.step + 1, step));
}

/** A guess never cuts off less than this share of what is left. */
const MOST_SHARE = 0.9;
/** With so few left halving is as quick. */
const FEW_STEPS = 4;

const useOf = ({ why }: ChartAnswer): number => ("use" in why ? why.use : Infinity);

/** Narrowest opening of a chart, mm: the least door leaf is wider. */
const NARROWEST_MM = 300;

/** Widths at which a column is asked where a wider opening may fare better, mm, besides the widest that nothing forbids. */
const ASKED_MM = [NARROWEST_MM, 1200, 2400, 4800, 8000] as const;

/** What is known of a column: those traced on either side, and whether the wall is plain: then wider is never cheaper. */
export type ColumnGround = { readonly near: readonly ChartColumn[]; readonly isPlain: boolean };

/** One column: widths from the narrowest to the widest that stays on the face. */
export function tracedColumn(
  centreMm: number,
  lengthMm: number,
  answerOf: (widthMm: number) => ChartAnswer,
  forbidden: (widthMm: number) => ChartAnswer | undefined,
  { near, isPlain }: ColumnGround,
): ChartColumn {
  const mostMm = Math.floor((2 * Math.min(centreMm, lengthMm - centreMm)) / STEP_MM) * STEP_MM;
  const widths = stepsTo(mostMm);
  const free = widths.filter((widthMm) => forbidden(widthMm) === undefined);
  const widest = free.at(-1);
  const apart = isPlain ? [NARROWEST_MM] : ASKED_MM;
  const asked = widest === undefined ? [] : [...apart.filter((widthMm) => widthMm < widest), widest];
  const solved = tracedRuns(
    asked.map((widthMm) => widthMm / STEP_MM),
    (step) => answerOf(step * STEP_MM),
    hintsFrom(near, centreMm),
  ).map(({ from, to, answer }): ChartStretch => ({ fromMm: from * STEP_MM, toMm: to * STEP_MM, ...answer }));
  return { centreMm, mostMm, stretches: [...solved, ...barred(widths.slice(free.length), forbidden)] };
}

/** Steps at which stretches end, between those of two columns alike, or as in the nearest. */
function hintsFrom(near: readonly ChartColumn[], centreMm: number): number[] {
  const [a, b] = near.toSorted((one, other) => Math.abs(one.centreMm - centreMm) - Math.abs(other.centreMm - centreMm));
  if (a === undefined) return [];
  const alike =
    b?.stretches.length === a.stretches.length &&
    a.stretches.every(({ verdict }, n) => b.stretches[n]?.verdict === verdict);
  const share = alike ? (centreMm - a.centreMm) / (b.centreMm - a.centreMm) : 0;
  return a.stretches.map(({ toMm }, n) => {
    const other = b?.stretches[n]?.toMm ?? toMm;
    return Math.round((toMm + share * (other - toMm)) / STEP_MM);
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
