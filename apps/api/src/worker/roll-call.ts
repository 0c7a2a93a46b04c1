import type { FastifyBaseLogger } from "fastify";
import type { Connection } from "../store/connection.ts";
import { beat, leave, unlockVanished } from "../store/worker-rows.ts";

const beatMs = 2_000;

/**
 * Says every two seconds that this process's runners are there, and gives the jobs of those that have not said so for
 * ten seconds back to the queue: a killed worker's job goes on at once instead of after the hours that the queue itself
 * waits. All times are the database's.
 */
export class RollCall {
  readonly #db: Connection;
  readonly #log: FastifyBaseLogger;
  readonly #runners = new Set<string>();
  #timer: NodeJS.Timeout | undefined;
  #calling = false;

  constructor(db: Connection, log: FastifyBaseLogger) {
    this.#db = db;
    this.#log = log;
  }

  /** Counts a runner among those that are there, from now on. */
  add(runner: string): void {
    this.#runners.add(runner);
    this.#timer ??= setInterval(() => void this.#call(), beatMs);
    void this.#call();
  }

  /** No longer says that a runner is there: its jobs are given back like those of any that is gone. */
  remove(runner: string): void {
    this.#runners.delete(runner);
  }

  /** Jobs that this process still holds are given back at once; with the database away, others do so later. */
  async close(): Promise<void> {
    clearInterval(this.#timer);
    await leave(this.#db, [...this.#runners]).catch((error: unknown) =>
      this.#log.warn({ err: error }, "could not give jobs back; others will"),
    );
  }

  async #call(): Promise<void> {
    if (this.#calling) return;
    this.#calling = true;
    try {
      await beat(this.#db, [...this.#runners]);
      const vanished = await unlockVanished(this.#db);
      if (vanished > 0) this.#log.warn({ vanished }, "jobs of workers that are gone were given back to the queue");
    } catch (error) {
      this.#log.warn({ err: error }, "could not say that this worker is there; trying again");
    } finally {
      this.#calling = false;
    }
  }
}
