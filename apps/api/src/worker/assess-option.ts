import { z } from "zod";
import type { WorkerPool } from "../assessment/worker-pool.ts";
import { optionTask } from "../queue/add-option.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { recordOptionAnswer } from "../services/options/record-option-answer.ts";
import { findOption } from "../store/option-rows.ts";

const Payload = z.object({ projectId: z.uuid(), optionId: z.uuid() });

/** A fault of the engine, or a time limit, is tried once more; what fails twice is written down as failed. */
const mostEngineTries = 2;

/** The engine's answer to one alternative, in the threads that assess revisions. */
export class AssessOption implements Task {
  readonly name = optionTask;
  readonly #pool: WorkerPool;

  constructor(pool: WorkerPool) {
    this.#pool = pool;
  }

  async run(payload: unknown, { database, log, attempt, lastTry }: TaskContext): Promise<void> {
    const key = Payload.parse(payload);
    const found = await findOption(database.connection, key);
    if (found?.answer.state !== "waiting") return;
    const { scheme, option } = found;
    const assessed = await this.#pool.assess({ scheme, contentDigest: option.contentDigest });
    if (!assessed.ok && attempt < mostEngineTries && !lastTry) throw new Error(assessed.why);
    if (!assessed.ok) log.error({ ...key, why: assessed.why }, "assessment of an alternative failed");
    await recordOptionAnswer(database, key, assessed);
  }
}
