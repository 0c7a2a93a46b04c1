import { z } from "zod";
import type { WorkerPool } from "../assessment/worker-pool.ts";
import { assessmentKey, assessTask } from "../queue/add-assessment.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { recordAssessment } from "../services/record-assessment.ts";
import { noteSteps, readLatestRun, tellProgress, type RunKey } from "../store/assessment-rows.ts";
import { readRevision } from "../store/revision-rows.ts";

const Payload = z.object({ projectId: z.uuid(), letter: z.string(), attempt: z.int() });

/** A fault of the engine, or a time limit, is tried once more; what fails twice is written down as failed. */
const mostEngineTries = 2;

/** The engine's answer to one run on a revision, worked out in a thread that can be ended from elsewhere. */
export class AssessRevision implements Task {
  readonly name = assessTask;
  readonly #pool: WorkerPool;
  readonly #underway = new Map<string, { run: RunKey; stopped: AbortController }>();

  constructor(pool: WorkerPool) {
    this.#pool = pool;
  }

  /** Ends the thread that works on a run, where that is in this process. */
  stop(key: string): void {
    this.#underway.get(key)?.stopped.abort();
  }

  /** Ends the threads that work on runs which have their answer: word of it may have been missed. */
  async stopAnswered(context: Pick<TaskContext, "database" | "log">): Promise<void> {
    for (const [key, { run }] of this.#underway) {
      const goOn = await waits(context, run).catch(() => true); // the database is away: asked again at the next word
      if (!goOn) this.stop(key);
    }
  }

  async run(payload: unknown, context: TaskContext): Promise<void> {
    const run = Payload.parse(payload);
    const { database, log, attempt, lastTry } = context;
    const revision = await readRevision(database.connection, run.projectId, run.letter);
    if (revision === null || !(await waits(context, run))) return;
    const { scheme, contentDigest } = revision;
    const key = assessmentKey(run);
    const stopped = new AbortController();
    this.#underway.set(key, { run, stopped });
    try {
      const noting = new Noting(context, run);
      const options = { signal: stopped.signal, onStep: (done: number) => noting.step(done) };
      await noting.started();
      const assessed = await this.#pool.assess({ scheme, contentDigest }, options);
      await noting.settled();
      if (stopped.signal.aborted) return; // whoever stopped it has written so
      if (!assessed.ok && attempt < mostEngineTries && !lastTry) throw new Error(assessed.why);
      if (!assessed.ok) log.error({ ...run, why: assessed.why }, "assessment failed");
      await recordAssessment(database, { ...run, contentDigest }, assessed);
    } finally {
      this.#underway.delete(key);
    }
  }
}

async function waits(
  { database }: Pick<TaskContext, "database">,
  { projectId, letter, attempt }: RunKey,
): Promise<boolean> {
  const latest = await readLatestRun(database.connection, projectId, letter);
  return latest.attempt === attempt && latest.assessment === "waiting";
}

/** Writes down how far a run is, in order and never in its way: what cannot be written is only not shown. */
class Noting {
  readonly #context: TaskContext;
  readonly #run: RunKey;
  #last: Promise<void> = Promise.resolve();

  constructor(context: TaskContext, run: RunKey) {
    this.#context = context;
    this.#run = run;
  }

  started = (): Promise<void> => this.#note(0, true);
  step = (done: number): Promise<void> => this.#note(done, false);
  settled = (): Promise<void> => this.#last;

  #note(steps: number, started: boolean): Promise<void> {
    const { connection } = this.#context.database;
    this.#last = this.#last
      .then(() => noteSteps(connection, this.#run, steps, started))
      .then(() => tellProgress(connection, this.#run))
      .catch((error: unknown) => this.#context.log.warn({ err: error }, "progress could not be noted"));
    return this.#last;
  }
}
