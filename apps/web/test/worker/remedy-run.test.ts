import { knownRun } from "@cornerway/engine";
import { demoCostBook, type RemedyList } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import type { RemedyQuestion, RemedyWord } from "../../src/worker/remedy-messages.ts";
import { KnownRuns } from "../../src/worker/known-runs.ts";
import { RemedyRun, type RemediesSoFar } from "../../src/worker/remedy-run.ts";
import { demoScheme } from "../support/demo-scheme.ts";
import { lockedAtFour } from "../remedies/locked-at-four.ts";

const list: RemedyList = {
  ...{ markId: "tips-over:t1", under: "gravity loads only", offered: [lockedAtFour], apart: [], failed: [] },
  ...{ looked: 3, proved: 1, leftOut: 0 },
};

interface Thread {
  asked: RemedyQuestion[];
  ended: boolean;
  say: (word: RemedyWord) => void;
}

/** Threads that say only what the test has them say. */
function office(known = new KnownRuns()) {
  const threads: Thread[] = [];
  const told: (RemediesSoFar | null)[] = [];
  const start = () => {
    const thread: Thread = { asked: [], ended: false, say: () => undefined };
    threads.push(thread);
    return {
      post: (question: RemedyQuestion) => void thread.asked.push(question),
      listen: (hear: (word: RemedyWord) => void) => void (thread.say = hear),
      end: () => void (thread.ended = true),
    };
  };
  return { threads, told, run: new RemedyRun(start, (so) => told.push(so), known) };
}

const turnOf = (thread: Thread | undefined) => thread?.asked[0]?.turn ?? -1;

describe("the search for remedies", () => {
  it("tells each option as it is found, and the whole list at its end", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    const [thread] = threads;
    const turn = turnOf(thread);
    thread?.say({ kind: "step", turn, step: { kind: "proving", change: lockedAtFour.change, done: 0, of: 2 } });
    expect(told.at(-1)).toMatchObject({ state: "searching", done: 0, of: 2, proving: lockedAtFour.change });
    thread?.say({ kind: "step", turn, step: { kind: "found", remedy: lockedAtFour, done: 1, of: 2 } });
    expect(told.at(-1)?.found).toEqual([lockedAtFour]);
    thread?.say({ kind: "listed", turn, list });
    expect(told.at(-1)).toMatchObject({ state: "searched", list, proving: null });
  });

  it("hands the search the full run of its scheme where the page has it, and that of no other", () => {
    const runs = new KnownRuns();
    const { threads, run } = office(runs);
    const known = knownRun(demoScheme, { accepted: false, refusals: [] });
    runs.keep(known);
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    expect(threads[0]?.asked[0]?.known).toEqual(known);
    run.ask({ ...demoScheme, pads: [] }, "tips-over:t1", demoCostBook);
    expect(threads[1]?.asked[0]).toBeDefined();
    expect(threads[1]?.asked[0]?.known).toBeUndefined();
  });

  it("tells an option once, though a search that lost its helper finds it again", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    const step = { kind: "found", remedy: lockedAtFour, done: 1, of: 2 } as const;
    for (let time = 0; time < 2; time++) threads[0]?.say({ kind: "step", turn: turnOf(threads[0]), step });
    expect(told.at(-1)?.found).toEqual([lockedAtFour]);
  });

  it("keeps a list that was made: asked again it starts no thread", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    threads[0]?.say({ kind: "listed", turn: turnOf(threads[0]), list });
    run.close();
    run.ask({ ...demoScheme }, "tips-over:t1", demoCostBook);
    expect(threads).toHaveLength(1);
    expect(told.at(-1)).toMatchObject({ state: "searched", list });
  });

  it("asks the same thread about the next mark once it has ended its search", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    threads[0]?.say({ kind: "listed", turn: turnOf(threads[0]), list });
    run.close();
    run.ask(demoScheme, "overhang:f1:door", demoCostBook);
    expect(threads).toHaveLength(1);
    expect(threads[0]?.ended).toBe(false);
    const turn = threads[0]?.asked[1]?.turn ?? -1;
    expect(turn).not.toBe(turnOf(threads[0]));
    threads[0]?.say({ kind: "listed", turn, list: { ...list, markId: "overhang:f1:door" } });
    expect(told.at(-1)).toMatchObject({ markId: "overhang:f1:door", state: "searched" });
  });

  it("ends the thread when another mark is asked about, and hears it no more", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    run.ask(demoScheme, "overhang:f1:door", demoCostBook);
    expect(threads[0]?.ended).toBe(true);
    threads[0]?.say({ kind: "listed", turn: turnOf(threads[0]), list });
    expect(told.at(-1)).toMatchObject({ markId: "overhang:f1:door", state: "searching", found: [] });
  });

  it("left half way, keeps what it has found and may be asked again", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    const turn = turnOf(threads[0]);
    threads[0]?.say({ kind: "step", turn, step: { kind: "found", remedy: lockedAtFour, done: 1, of: 4 } });
    run.stop();
    expect(threads[0]?.ended).toBe(true);
    expect(told.at(-1)).toMatchObject({ state: "stopped", found: [lockedAtFour] });
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    expect(threads).toHaveLength(2);
  });

  it("says what the engine said when it broke", () => {
    const { threads, told, run } = office();
    run.ask(demoScheme, "tips-over:t1", demoCostBook);
    threads[0]?.say({ kind: "broke", turn: turnOf(threads[0]), why: "no mark." });
    expect(told.at(-1)).toMatchObject({ state: "stopped", broke: "no mark." });
  });
});
