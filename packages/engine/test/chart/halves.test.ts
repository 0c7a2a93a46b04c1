import { describe, expect, it } from "vitest";
import { halvesOf } from "../../src/chart/halves.ts";
import type { OpeningChart } from "../../src/chart/chart.ts";
import type { HalfWord } from "../../src/chart/other-half.ts";
import { RunHalves } from "../../src/chart/run-halves.ts";
import { otherHalfOfChart, sharedOpeningChart } from "../../src/opening-chart.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { doorRequest, drawnChart } from "./drawn-chart.ts";

// One plain 20 ft unit under gravity alone, its right side.

const plain = drawnUnit({ type: "1CC" });
const fineness = { apartMm: 1600, envelope: "deciding sets" } as const;

/** Drawn with another thread that tells one word between two steps, and the last only while it is awaited. */
function drawnWith(words: readonly HalfWord[]): { readonly chart: OpeningChart; readonly done: readonly number[] } {
  const left = words.slice();
  const done: number[] = [];
  let chart: OpeningChart | undefined;
  const waiting: (() => void)[] = [];
  const run = new RunHalves(sharedOpeningChart(plain, doorRequest, fineness), {
    step: (step) => step.kind === "column" && done.push(step.done),
    settle: (answer) => (chart = answer.accepted ? answer.chart : undefined),
    fail: (error) => {
      throw error;
    },
    breathe: (goOn) => waiting.push(goOn),
  });
  run.goOn();
  while (chart === undefined) {
    const word = left.length > 1 || waiting.length === 0 ? left.shift() : undefined;
    if (word !== undefined) run.hear(word);
    else if (waiting.length === 0) throw new Error("it waits for what nobody tells");
    waiting.shift()?.();
  }
  return { chart, done };
}

const seen = ({ columns }: OpeningChart) =>
  columns.map(({ centreMm, stretches }) => [
    centreMm,
    ...stretches.map(({ fromMm, toMm, verdict }) => `${fromMm}–${toMm} ${verdict}`),
  ]);

describe("a chart of which another thread traces half", () => {
  const alone = drawnChart(plain, doorRequest, fineness).chart;
  const words = [...otherHalfOfChart(plain, doorRequest, fineness)];

  it("has the verdicts of one that is traced alone, each column told once", () => {
    const { chart, done } = drawnWith(words);
    expect(words.filter(({ kind }) => kind === "column").length).toBeGreaterThan(0);
    expect(seen(chart)).toEqual(seen(alone));
    expect(done).toEqual(alone.columns.map((_, n) => n + 1));
    expect(chart.basis.vectors).toEqual(alone.basis.vectors);
    expect(chart.solved).toBeGreaterThan(alone.solved);
  });

  it("is traced whole where the other thread is gone, before it told anything or after", () => {
    const gone: HalfWord = { kind: "gone" };
    for (const told of [[gone], [...words.slice(0, 1), gone]]) {
      const { chart, done } = drawnWith(told);
      expect(seen(chart)).toEqual(seen(alone));
      expect(done).toEqual(alone.columns.map((_, n) => n + 1));
    }
  });
});

describe("halves of the columns of a side", () => {
  const all = [6000, 3000, 9000, 1500, 4500, 7500, 10_500];

  it("stand on either side of a place, with as many in each as takes work, the first column with its own", () => {
    expect(halvesOf(all, () => true)).toEqual({ own: [6000, 3000, 1500, 4500], beside: [9000, 7500, 10_500] });
    const isFree = (centreMm: number): boolean => centreMm > 4000;
    expect(halvesOf(all, isFree)).toEqual({ own: [6000, 3000, 1500, 4500, 7500], beside: [9000, 10_500] });
  });

  it("have the first column in the upper half where it stands there", () => {
    const { own, beside } = halvesOf([9000, 6000, 3000, 4500], () => true);
    expect([own, beside]).toEqual([
      [9000, 6000],
      [3000, 4500],
    ]);
  });

  it("are one where there is one column", () => {
    expect(halvesOf([3000], () => true)).toEqual({ own: [3000], beside: [] });
  });
});
