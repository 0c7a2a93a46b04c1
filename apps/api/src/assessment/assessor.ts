import type { FastifyBaseLogger } from "fastify";
import { recordAssessment } from "../services/record-assessment.ts";
import type { Database } from "../store/database.ts";
import { readRevision, readWaiting } from "../store/revision-rows.ts";
import type { WorkerPool } from "./worker-pool.ts";

const lookAgainMs = 15_000;

/**
 * Sees to it that every revision gets the server's answer: those just sent, and those that a process left when it was
 * ended. Two processes may assess one revision; the answer is written once.
 */
export class Assessor {
  readonly #database: Database;
  readonly #pool: WorkerPool;
  readonly #log: FastifyBaseLogger;
  readonly #underway = new Map<string, Promise<void>>();
  readonly #timer: NodeJS.Timeout;

  constructor(database: Database, pool: WorkerPool, log: FastifyBaseLogger) {
    this.#database = database;
    this.#pool = pool;
    this.#log = log;
    this.#timer = setInterval(() => this.wake(), lookAgainMs);
  }

  /** Looks for waiting revisions now. */
  wake(): void {
    this.#takeUp().catch((error: unknown) => this.#log.warn({ err: error }, "could not look for waiting revisions"));
  }

  async close(): Promise<void> {
    clearInterval(this.#timer);
    await this.#pool.close();
    await Promise.all(this.#underway.values());
  }

  async #takeUp(): Promise<void> {
    for (const waiting of await readWaiting(this.#database.connection)) {
      const key = `${waiting.projectId} ${waiting.letter}`;
      if (this.#underway.has(key)) continue;
      const work = this.#assess(waiting)
        .catch((error: unknown) => this.#log.warn({ err: error, ...waiting }, "assessment left for later"))
        .finally(() => this.#underway.delete(key));
      this.#underway.set(key, work);
    }
  }

  async #assess({ projectId, letter }: { projectId: string; letter: string }): Promise<void> {
    const revision = await readRevision(this.#database.connection, projectId, letter);
    if (revision === null) return;
    const { scheme, contentDigest } = revision;
    const assessed = await this.#pool.assess({ scheme, contentDigest });
    if (!assessed.ok) this.#log.error({ projectId, letter, why: assessed.why }, "assessment failed");
    await recordAssessment(this.#database, { projectId, letter, contentDigest }, assessed);
  }
}
