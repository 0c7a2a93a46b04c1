import type { ChartAnswer } from "./chart.ts";

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
export type Hint = { readonly step: number; readonly use: number };

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

export const useOf = ({ why }: Pick<ChartAnswer, "why">): number => ("use" in why ? why.use : Infinity);
