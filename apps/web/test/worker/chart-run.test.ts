import type { ChartColumn, ChartRequest, OpeningChart } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import type { ChartQuestion, ChartWord } from "../../src/worker/chart-messages.ts";
import { ChartRun, type ChartSoFar } from "../../src/worker/chart-run.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const request: ChartRequest = {
  containerId: "f1",
  face: "right",
  sillUm: 180_000,
  heightUm: 2_200_000,
  use: "door",
  framed: true,
};
const column = (centreMm: number): ChartColumn => ({ centreMm, mostMm: 600, stretches: [] });
const chart: OpeningChart = {
  request,
  side: {
    ...{ lengthMm: 12_192, heightMm: 2896, keepZones: [], others: [], bearings: [] },
    sheet: { u0: 160, u1: 12_000, v0: 170, v1: 2800 },
  },
  basis: { under: "all loads", vectors: [], framing: [], assumed: [] },
  without: { verdict: "works as built", reasons: 0 },
  columns: [column(1000), column(2000)],
  exceptions: [],
  solved: 2,
  confirmed: 1,
};

/** Threads that say only what the test has them say. */
function office() {
  const threads: { asked: ChartQuestion[]; ended: boolean; say: (word: ChartWord) => void }[] = [];
  const told: ChartSoFar[] = [];
  const run = new ChartRun(
    () => {
      const deaf: (word: ChartWord) => void = () => undefined;
      const thread = { asked: [] as ChartQuestion[], ended: false, say: deaf };
      threads.push(thread);
      return {
        post: (question) => thread.asked.push(question),
        listen: (hear) => (thread.say = hear),
        end: () => (thread.ended = true),
      };
    },
    (so) => told.push(so),
  );
  const last = () => told.at(-1);
  const turn = () => threads.at(-1)?.asked.at(-1)?.turn ?? NaN;
  return { run, threads, last, turn };
}

describe("a chart that is drawn", () => {
  it("takes columns as they come, in the order of their places, and is whole in the end", () => {
    const { run, threads, last, turn } = office();
    run.ask(demoScheme, request);
    threads[0]?.say({ kind: "column", turn: turn(), column: column(2000), done: 1, of: 2 });
    threads[0]?.say({ kind: "column", turn: turn(), column: column(1000), done: 2, of: 2 });
    expect(last()?.columns.map(({ centreMm }) => centreMm)).toEqual([1000, 2000]);
    threads[0]?.say({ kind: "drawn", turn: turn(), chart });
    expect([last()?.state, last()?.chart]).toEqual(["drawn", chart]);
  });

  it("puts a column that was traced anew in the place of the first", () => {
    const { run, threads, last, turn } = office();
    run.ask(demoScheme, request);
    threads[0]?.say({ kind: "column", turn: turn(), column: column(2000), done: 1, of: 1 });
    threads[0]?.say({ kind: "column", turn: turn(), column: { ...column(2000), mostMm: 900 }, done: 1, of: 1 });
    expect(last()?.columns.map(({ centreMm, mostMm }) => [centreMm, mostMm])).toEqual([[2000, 900]]);
  });

  it("is kept by what determines it: asked for again, no thread is started", () => {
    const { run, threads, last, turn } = office();
    run.ask(demoScheme, request);
    threads[0]?.say({ kind: "drawn", turn: turn(), chart });
    run.ask(demoScheme, { ...request, sillUm: 200_000 });
    expect(threads).toHaveLength(2);
    run.ask(structuredClone(demoScheme), { ...request });
    expect(threads).toHaveLength(2);
    expect(last()?.chart).toEqual(chart);
  });
});

describe("a chart that is stopped", () => {
  it("ends its thread, keeps what is drawn, and hears nothing more", () => {
    const { run, threads, last, turn } = office();
    run.ask(demoScheme, request);
    threads[0]?.say({ kind: "column", turn: turn(), column: column(2000), done: 1, of: 2 });
    run.stop();
    expect(threads[0]?.ended).toBe(true);
    expect([last()?.state, last()?.columns.length]).toEqual(["stopped", 1]);
    threads[0]?.say({ kind: "column", turn: turn(), column: column(1000), done: 2, of: 2 });
    expect(last()?.columns).toHaveLength(1);
  });

  it("ends for another question as well", () => {
    const { run, threads } = office();
    run.ask(demoScheme, request);
    run.ask(demoScheme, { ...request, face: "left" });
    expect(threads.map(({ ended }) => ended)).toEqual([true, false]);
  });

  it("says why when it broke, and can be drawn again", () => {
    const { run, threads, last, turn } = office();
    run.ask(demoScheme, request);
    threads[0]?.say({ kind: "broke", turn: turn(), why: "the thread broke." });
    expect([last()?.state, last()?.broke]).toEqual(["stopped", "the thread broke."]);
    run.ask(demoScheme, request);
    expect(last()?.broke).toBeNull();
  });
});
