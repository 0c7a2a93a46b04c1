import { assessForRecord, leastShared } from "@cornerway/engine";
import { emptyScheme, resultDigest, type Scheme } from "@cornerway/schema";
import { afterEach, describe, expect, it, vi } from "vitest";
import { assessmentSteps } from "../../src/assessment/assess-scheme.ts";
import { WorkerPool } from "../../src/assessment/worker-pool.ts";
import { digestOfScheme } from "../../src/store/digest-of-scheme.ts";
import { unit } from "../support/sample.ts";

const pools: WorkerPool[] = [];
afterEach(() => Promise.all(pools.splice(0).map((pool) => pool.close())));

function open(options: ConstructorParameters<typeof WorkerPool>[0]): WorkerPool {
  const pool = new WorkerPool(options);
  pools.push(pool);
  return pool;
}

const schemeOf = (count: number): Scheme => ({
  ...emptyScheme,
  containers: Array.from({ length: count }, (_, n) => unit(n + 1)).sort((a, b) => (a.id < b.id ? -1 : 1)),
});
const taskOf = (scheme: Scheme) => ({ scheme, contentDigest: digestOfScheme(scheme) });
/** Of IBC 2024, while an empty scheme adopts IBC 2021. */
const edition = "IBC 2024";
const ofAnotherEdition: NonNullable<Scheme["basis"]["hazards"]> = {
  riskCategory: "II",
  wind: { edition, speedMs: 40, exposure: "B", elevationM: 0, topographicFactor: 1 },
  snow: { edition, groundPa: 500, roofExposure: "partially exposed", thermal: "heated", winterWind: 0.3 },
  seismic: { edition, ss: 0.1, s1: 0.05, siteClass: "D", longPeriodS: 8 },
};
const beside = (file: string) => new URL(file, import.meta.url);

describe("WorkerPool", () => {
  it("gives the engine's own answer with what stands behind it, bound to its content", async () => {
    const scheme = schemeOf(2);
    const { contentDigest } = taskOf(scheme);
    const answer = assessForRecord(scheme);
    if (!answer.accepted) throw new Error("there are no hazards to refuse");
    const { assessment, proof } = answer;
    const given = await open({ threads: 1, limitMs: 60_000 }).assess(taskOf(scheme));
    if (!given.ok) throw new Error(given.why);
    expect(given.assessment).toEqual(assessment);
    expect(given.resultDigest).toBe(resultDigest(contentDigest, assessment, proof));
    expect(JSON.parse(given.proof?.report ?? "")).toEqual(proof.report);
    expect(given.proof?.workings.map(({ id }) => id)).toEqual(proof.workings.map(({ id }) => id));
  });

  it("gives the same answer to the bit where another thread shares the work", async () => {
    const task = taskOf(schemeOf(leastShared));
    const [alone, shared] = [open({ threads: 1, limitMs: 60_000 }), open({ threads: 1, helpers: 1, limitMs: 60_000 })];
    expect(await shared.assess(task)).toEqual(await alone.assess(task));
  });

  it("fails as a whole where a helper dies, and says so", async () => {
    const pool = open({ threads: 1, limitMs: 60_000, entry: beside("./helper-dies.ts") });
    expect(await pool.assess(taskOf(schemeOf(1)))).toEqual({
      ok: false,
      why: "the engine stopped: a helping thread ended",
    });
    expect(pool.state.threads).toBe(0);
  });

  it("tells of hazards that cannot be used with the load path alone", async () => {
    const { basis, site } = emptyScheme;
    const scheme = { ...schemeOf(1), site, basis: { ...basis, hazards: ofAnotherEdition } };
    const given = await open({ threads: 1, limitMs: 60_000 }).assess(taskOf(scheme));
    expect(given).toMatchObject({ ok: true, proof: null, assessment: { verdict: "not checked" } });
  });

  it("answers more tasks than it has threads, each its own", async () => {
    const pool = open({ threads: 2, limitMs: 60_000 });
    const answers = await Promise.all([1, 2, 3, 4, 5, 6].map((count) => pool.assess(taskOf(schemeOf(count)))));
    expect(answers.map((answer) => (answer.ok ? answer.assessment.units.length : answer.why))).toEqual([
      1, 2, 3, 4, 5, 6,
    ]);
  });

  it("leaves the event loop free while a thread works", async () => {
    const pool = open({ threads: 1, limitMs: 400, entry: beside("./never-answers.mjs") });
    let answered = false;
    const work = pool.assess(taskOf(schemeOf(1))).then(() => (answered = true));
    await new Promise((resume) => setTimeout(resume, 50));
    expect(answered).toBe(false);
    await work;
    expect(answered).toBe(true);
  });

  it("ends a thread that passes the limit and goes on with the next task in another one", async () => {
    const pool = open({ threads: 1, limitMs: 200, entry: beside("./never-answers.mjs") });
    const both = await Promise.all([pool.assess(taskOf(schemeOf(1))), pool.assess(taskOf(schemeOf(2)))]);
    expect(both).toEqual([1, 2].map(() => ({ ok: false, why: "no answer within 0.2 s" })));
  });

  it("says what the engine stopped with", async () => {
    const pool = open({ threads: 1, limitMs: 5000, entry: beside("./throws.mjs") });
    expect(await pool.assess(taskOf(schemeOf(1)))).toEqual({ ok: false, why: "the engine stopped: singular" });
  });

  it("tells the steps that are done", async () => {
    const steps: number[] = [];
    await open({ threads: 1, limitMs: 60_000 }).assess(taskOf(schemeOf(1)), { onStep: (done) => steps.push(done) });
    expect(steps).toEqual(Array.from({ length: assessmentSteps - 1 }, (_, at) => at + 1));
  });

  it("ends the thread of a task that is stopped, and one that still waits for a thread never begins", async () => {
    const pool = open({ threads: 1, limitMs: 60_000, entry: beside("./never-answers.mjs") });
    const stops = [new AbortController(), new AbortController()];
    const tasks = stops.map(({ signal }) => pool.assess(taskOf(schemeOf(1)), { signal }));
    expect(pool.state).toEqual({ running: 1, waiting: 1, threads: 1 });
    for (const stop of stops) stop.abort();
    expect(await Promise.all(tasks)).toEqual([1, 2].map(() => ({ ok: false, why: "stopped" })));
    expect(pool.state).toEqual({ running: 0, waiting: 0, threads: 0 });
  });

  it("forgets a thread that dies while it is idle, and gives the next task to another", async () => {
    const pool = open({ threads: 1, limitMs: 60_000, entry: beside("./dies-idle.ts") });
    expect(await pool.assess(taskOf(schemeOf(1)))).toMatchObject({ ok: true });
    await expect.poll(() => pool.state.threads).toBe(0);
    expect(await pool.assess(taskOf(schemeOf(1)))).toMatchObject({ ok: true });
  });

  it("rejects what it has not done when it is closed, so that it is not taken for a failure of the engine", async () => {
    const pool = open({ threads: 1, limitMs: 60_000, entry: beside("./never-answers.mjs") });
    const [running, queued] = [pool.assess(taskOf(schemeOf(1))), pool.assess(taskOf(schemeOf(2)))];
    const outcomes = Promise.allSettled([running, queued]);
    await pool.close();
    expect((await outcomes).map(({ status }) => status)).toEqual(["rejected", "rejected"]);
    await expect(pool.assess(taskOf(schemeOf(1)))).rejects.toThrow("closed");
  });

  it("leaves no clock running when it is closed, so that the process can end", async () => {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    try {
      const pool = open({ threads: 1, limitMs: 60_000, entry: beside("./never-answers.mjs") });
      const outcomes = Promise.allSettled([pool.assess(taskOf(schemeOf(1)))]);
      expect(vi.getTimerCount()).toBe(1);
      await pool.close();
      expect((await outcomes).map(({ status }) => status)).toEqual(["rejected"]);
      expect(vi.getTimerCount()).toBe(0);
    } finally {
      vi.useRealTimers();
    }
  });
});
