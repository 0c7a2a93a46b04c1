import type { Verdict } from "@cornerway/schema";
import { verdictRank } from "../marks/verdicts-of.ts";
import type { ChartAnswer } from "./chart.ts";
import type { AnswerAt, Run } from "./traced-runs.ts";

/** Where the last step of a verdict, or of a better one, may lie. */
export type LastOf = { readonly verdict: Verdict; readonly step: number };

/**
 * Runs of one verdict from the first step to the last where a later step is never better. The last step that is no worse than each
 * verdict is asked for beside the one after it, about where `hints` say, elsewhere where the use reaches 1 between those asked
 * before. `easiest`: no step is better.
 */
export function monotoneRuns(
  [first, last]: readonly [number, number],
  answerAt: AnswerAt,
  easiest: Verdict,
  hints: readonly LastOf[] = [],
): Run[] {
  const asked = new Asked(first, last, answerAt);
  const from = verdictRank[easiest];
  for (const verdict of verdicts.slice(0, -1)) if (verdictRank[verdict] >= from) asked.closeIn(verdict, hints);
  return asked.runs();
}

/** From the quietest to the one that decides. */
export const verdicts: readonly Verdict[] = [
  "works as built",
  "works with steel",
  "not checked",
  "needs the engineer",
  "does not work",
];

/** After so many steps asked about where a change may lie, it is halved. */
const MOST_AIMED = 5;

class Asked {
  private readonly first: number;
  private readonly last: number;
  private readonly answerAt: AnswerAt;
  private readonly answers = new Map<number, ChartAnswer>();

  constructor(first: number, last: number, answerAt: AnswerAt) {
    this.first = first;
    this.last = last;
    this.answerAt = answerAt;
  }

  /** Until the last step no worse than this verdict and the first that is worse are known. */
  closeIn(verdict: Verdict, hints: readonly LastOf[]): void {
    let aim = hints.find((hint) => hint.verdict === verdict)?.step;
    for (let count = 0; ; count++) {
      const [low, high] = this.round(verdict);
      if (high - low <= 1) return;
      const guess = count < MOST_AIMED ? (aim ?? this.crossing(verdict)) : undefined;
      aim = undefined;
      const step = Math.min(high - 1, Math.max(low + 1, guess ?? Math.floor((low + high) / 2)));
      this.answers.set(step, this.answerAt(step));
    }
  }

  /** Steps of one verdict, those between two of it and those before the first asked and after the last among them. */
  runs(): Run[] {
    const steps = [...this.answers.keys()].toSorted((a, b) => a - b);
    const runs: Run[] = [];
    for (const step of steps) {
      const answer = this.answers.get(step);
      if (answer === undefined) continue;
      const before = runs.at(-1);
      if (before?.answer.verdict === answer.verdict) runs[runs.length - 1] = { ...before, to: step, answer };
      else runs.push({ from: before === undefined ? this.first : step, to: step, answer });
    }
    const end = runs.at(-1);
    return end === undefined ? [] : [...runs.slice(0, -1), { ...end, to: this.last }];
  }

  /** The greatest step asked that is no worse, and the least that is worse; the steps beyond the ends where there is none. */
  private round(verdict: Verdict): [number, number] {
    let [low, high] = [this.first - 1, this.last + 1];
    for (const [step, answer] of this.answers)
      if (verdictRank[answer.verdict] > verdictRank[verdict]) high = Math.min(high, step);
    for (const step of this.answers.keys()) if (step < high) low = Math.max(low, step);
    return [low, high];
  }

  /**
   * The last step before the use reaches 1: on the line through the nearest that are no worse and worse where both are near, or
   * through the last two that are no worse; else as if it grew with the step.
   */
  private crossing(verdict: Verdict): number | undefined {
    const [low, high] = this.round(verdict).map((step) => this.pointAt(step, verdict));
    if (low !== undefined && high !== undefined && low.use > LITTLE && high.use < MUCH) return crosses(low, high);
    const steps = [...this.answers.keys()].filter((step) => step < (low?.step ?? 0)).toSorted((a, b) => b - a);
    const before = steps[0] === undefined ? undefined : this.pointAt(steps[0], verdict);
    const isOpen = high === undefined || high.use >= MUCH;
    if (isOpen && low !== undefined && before !== undefined && before.use < low.use)
      return Math.min(crosses(before, low), Math.ceil(MOST_GROWTH * low.step));
    const [nearest] = [low, high].flatMap((p) => p ?? []).toSorted((a, b) => Math.abs(a.use - 1) - Math.abs(b.use - 1));
    return nearest && Math.floor(nearest.step / nearest.use);
  }

  private pointAt(step: number, verdict: Verdict): UsePoint | undefined {
    const answer = this.answers.get(step);
    const use = answer && useFor(verdict, answer);
    return use === undefined || use <= 0 ? undefined : { step, use };
  }
}

type UsePoint = { readonly step: number; readonly use: number };

const crosses = (a: UsePoint, b: UsePoint): number =>
  Math.floor(a.step + ((1 - a.use) * (b.step - a.step)) / (b.use - a.use));

/** So much wider is asked at most on the strength of two that work. */
const MOST_GROWTH = 1.5;
/** Between these uses they grow about evenly. */
const LITTLE = 0.6;
const MUCH = 1.6;

/** Of a part that decides between this verdict and a worse one; under the assumptions that suit it best for the last of them. */
function useFor(verdict: Verdict, { verdict: found, why }: ChartAnswer): number | undefined {
  if (why.kind === "within") return found === verdict ? why.use : undefined;
  if (why.kind !== "part" || verdict === "works as built") return undefined;
  const use = verdict === "needs the engineer" ? (why.least ?? why.use) : why.use;
  return Number.isFinite(use) ? use : undefined;
}
