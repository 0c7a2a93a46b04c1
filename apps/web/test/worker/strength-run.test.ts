import { knownRun, type KnownRun } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import type { StrengthQuestion, StrengthWord } from "../../src/worker/strength-messages.ts";
import { StrengthRun, type Glance, type Judged } from "../../src/worker/strength-run.ts";
import { judgedAssessment, judgedProof } from "../support/judged-unit.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const at = (xMm: number) => schemeOf([unitAt("g1", "G1", xMm, 0, 0)]);

class Thread {
  readonly asked: StrengthQuestion[] = [];
  ended = false;
  hear: (word: StrengthWord) => void = () => undefined;
  post = (question: StrengthQuestion): void => void this.asked.push(question);
  listen = (hear: (word: StrengthWord) => void): void => void (this.hear = hear);
  end = (): void => void (this.ended = true);
}

function opened() {
  const threads: Thread[] = [];
  const judged: Judged[] = [];
  const progress: string[] = [];
  const start = () => {
    const thread = new Thread();
    threads.push(thread);
    return thread;
  };
  const glances: Glance[] = [];
  const known: KnownRun[] = [];
  const run = new StrengthRun(start, {
    glance: (glance) => glances.push(glance),
    judged: (answer) => judged.push(answer),
    known: (one) => known.push(one),
    progress: (_scheme, done, of) => progress.push(`${done}/${of}`),
  });
  return { run, threads, judged, progress, glances, known };
}

const answerTo = (turn: number): StrengthWord => ({
  ...{ kind: "judged", turn, assessment: judgedAssessment, report: judgedProof.report },
});
const working = judgedProof.workings[0]?.working ?? null;

describe("StrengthRun", () => {
  it("tells progress and the answer, for the scheme that was asked about", () => {
    const { run, threads, judged, progress } = opened();
    const scheme = at(0);
    run.ask(scheme);
    threads[0]?.hear({ kind: "progress", turn: 1, done: 2, of: 6 });
    threads[0]?.hear(answerTo(1));
    expect(progress).toEqual(["2/6"]);
    expect(judged).toMatchObject([{ scheme, broke: null }]);
  });

  it("hands on what was judged, once its answer is told", () => {
    const { run, threads, judged, known } = opened();
    const scheme = at(0);
    const one = knownRun(scheme, { accepted: false, refusals: [] });
    run.ask(scheme);
    threads[0]?.hear(answerTo(1));
    threads[0]?.hear({ kind: "known", known: one });
    expect(judged).toHaveLength(1);
    expect(known).toEqual([one]);
  });

  it("ends the thread of a run under way when the scheme changes, and tells nothing of it", () => {
    const { run, threads, judged } = opened();
    run.ask(at(0));
    run.leave(at(10));
    expect(threads[0]?.ended).toBe(true);
    threads[0]?.hear(answerTo(1));
    expect(judged).toEqual([]);
    run.ask(at(10));
    expect(threads).toHaveLength(2);
    threads[1]?.hear(answerTo(2));
    expect(judged).toHaveLength(1);
  });

  it("keeps the thread that answered: the next scheme is judged in it", () => {
    const { run, threads } = opened();
    run.ask(at(0));
    threads[0]?.hear(answerTo(1));
    run.leave(at(10));
    run.ask(at(10));
    expect(threads).toHaveLength(1);
    expect(threads[0]?.ended).toBe(false);
  });

  it("gives workings of the answer that stands, and none while another is awaited", async () => {
    const { run, threads } = opened();
    run.ask(at(0));
    threads[0]?.hear(answerTo(1));
    const asked = run.workingOf("one");
    expect(threads[0]?.asked.at(-1)).toEqual({ kind: "working", id: "one" });
    threads[0]?.hear({ kind: "working", id: "one", working });
    expect(working).not.toBeNull();
    expect(await asked).toBe(working);
    const late = run.workingOf("two");
    run.ask(at(10));
    expect(await late).toBeNull();
    expect(await run.workingOf("three")).toBeNull();
  });

  it("tells a glance of the scheme that is being judged, before its answer", () => {
    const { run, threads, glances, judged } = opened();
    const scheme = at(0);
    run.ask(scheme);
    threads[0]?.hear({ kind: "glance", turn: 1, parts: [], vectors: 4 });
    threads[0]?.hear({ kind: "glance", turn: 0, parts: [], vectors: 9 });
    expect(glances).toEqual([{ scheme, parts: [], vectors: 4 }]);
    expect(judged).toEqual([]);
  });

  it("says what the engine broke with", () => {
    const { run, threads, judged } = opened();
    run.ask(at(0));
    threads[0]?.hear({ kind: "broke", turn: 1, why: "singular" });
    expect(judged).toMatchObject([{ assessment: null, broke: "singular" }]);
  });

  it("numbers the answers of the page, whichever run they come from", () => {
    const answers = [opened(), opened()].map(({ run, threads, judged }) => {
      run.ask(at(0));
      threads[0]?.hear(answerTo(1));
      return judged[0]?.answer;
    });
    expect(answers[0]).not.toBe(answers[1]);
  });
});

describe("forces of a run", () => {
  const answer = { run: "r1", runs: ["r1", "r2"], forces: null };

  it("are asked of the thread that judged, and answered once", async () => {
    const { run, threads } = opened();
    const scheme = at(0);
    run.ask(scheme);
    threads[0]?.hear(answerTo(1));
    const told = run.forcesOf(scheme, ["r1"]);
    const asked = threads[0]?.asked.at(-1);
    if (asked?.kind !== "forces") throw new Error("forces were asked for");
    expect(asked.runs).toEqual(["r1"]);
    threads[0]?.hear({ kind: "forces", turn: asked.turn, answer });
    await expect(told).resolves.toEqual(answer);
  });

  it("are none while a scheme is judged, nor once another run is asked for or the thread ends", async () => {
    const { run, threads } = opened();
    run.ask(at(0));
    await expect(run.forcesOf(at(0), [])).resolves.toBeNull();
    threads[0]?.hear(answerTo(1));
    const first = run.forcesOf(at(0), ["r1"]);
    const second = run.forcesOf(at(0), ["r2"]);
    await expect(first).resolves.toBeNull();
    run.stop();
    await expect(second).resolves.toBeNull();
  });
});
