import { STEP_MM, type ChartAnswer, type ChartColumn, type ChartStretch } from "./chart.ts";

/** Answers along one line of places, by whole steps. */
export type AnswerAt = (step: number) => ChartAnswer;

/** Steps with the same verdict, first and last; `answer` is that of the last. */
export type Run = { readonly from: number; readonly to: number; readonly answer: ChartAnswer };

/**
 * Runs of one verdict from the first step to the last. The steps given are asked; between two that differ the change is closed
 * in on until it lies between neighbours. Between two that agree nothing else is looked for. `hints`: where a change
 * may lie.
 */
export function tracedRuns(steps: readonly number[], answerAt: AnswerAt, hints: readonly Hint[] = []): Run[] {
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

/** What lies between two points, in order, until neighbours differ. */
function between(low: Point, high: Point, answerAt: AnswerAt, hints: readonly Hint[]): Point[] {
  let [below, above] = [low, high];
  const asked: Point[] = [];
  const hint = hints.find(({ step }) => step > low.step && step < high.step);
  let aim = hint?.step;
  while (above.step - below.step > 1 && below.answer.verdict !== above.answer.verdict) {
    const step = aim === undefined || asked.length >= MOST_AIMED ? nextStep(below, above) : aim;
    const middle = { step, answer: answerAt(step) };
    asked.push(middle);
    const { verdict } = middle.answer;
    if (verdict === below.answer.verdict) below = middle;
    else if (verdict === above.answer.verdict) above = middle;
    else {
      const inside = [...between(below, middle, answerAt, hints), ...between(middle, above, answerAt, hints)];
      return [...asked, ...inside].toSorted((a, b) => a.step - b.step);
    }
    aim = hint && aimed(hint, asked, below, above);
  }
  return asked.toSorted((a, b) => a.step - b.step);
}

/** The last step before a change as it may lie, and the use there where the column beside it changes. */
type Hint = { readonly step: number; readonly use: number };

/** After so many steps asked about a hint, it misleads. */
const MOST_AIMED = 4;

/**
 * Where the use would be that of the hint, between the two points: were it to grow as between the last two asked, or with the
 * width where one is.
 */
function aimed({ use }: Hint, asked: readonly Point[], below: Point, above: Point): number | undefined {
  const [before, last] = asked.length > 1 ? asked.slice(-2) : [undefined, asked[0]];
  if (last === undefined) return undefined;
  const [from, now] = [before === undefined ? 0 : useOf(before.answer), useOf(last.answer)];
  const slope = (now - from) / (last.step - (before?.step ?? 0));
  const there = Math.round(last.step + (use - now) / slope);
  return Number.isFinite(there) ? Math.min(above.step - 1, Math.max(below.step + 1, there)) : undefined;
}

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

const useOf = ({ why }: Pick<ChartAnswer, "why">): number => ("use" in why ? why.use : Infinity);

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

/** Where stretches end, between those of two columns alike, or as in the nearest. */
function hintsFrom(near: readonly ChartColumn[], centreMm: number): Hint[] {
  const [a, b] = near.toSorted((one, other) => Math.abs(one.centreMm - centreMm) - Math.abs(other.centreMm - centreMm));
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
