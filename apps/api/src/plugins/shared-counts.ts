import type { FastifyBaseLogger } from "fastify";
import { addTries, type Counted } from "../store/rate-windows.ts";
import type { Connection } from "../store/connection.ts";

const tellEveryMs = 1_000;
const mostKeys = 20_000;

interface Known {
  /** All that were counted when the database was last told, by every process. */
  told: number;
  /** Counted here since. */
  since: number;
  endsAtMs: number;
}

/**
 * Counts requests for all processes together at no cost to a request: each counts in its memory, and once a second adds
 * what is new to the database and learns the sum. What others counted is thus known a second late. While the database is
 * away each process counts by itself.
 */
export class SharedCounts {
  readonly #db: Connection;
  readonly #log: FastifyBaseLogger;
  readonly #windowMs: number;
  readonly #known = new Map<string, Known>();
  readonly #timer: NodeJS.Timeout;
  #telling: Promise<void> = Promise.resolve();

  constructor(db: Connection, log: FastifyBaseLogger, windowMs: number) {
    this.#db = db;
    this.#log = log;
    this.#windowMs = windowMs;
    this.#timer = setInterval(() => void this.tell(), tellEveryMs);
  }

  /** Counts one more; how many there are in the window, and how long that lasts. */
  count(key: string): { current: number; ttl: number } {
    const nowMs = Date.now();
    let known = this.#known.get(key);
    if (known === undefined || known.endsAtMs <= nowMs) {
      if (this.#known.size >= mostKeys) this.#forgetEnded(nowMs);
      known = { told: 0, since: 0, endsAtMs: nowMs + this.#windowMs };
      this.#known.set(key, known);
    }
    known.since += 1;
    return { current: known.told + known.since, ttl: known.endsAtMs - nowMs };
  }

  /** Tells the database what is new here, one telling at a time. */
  tell(): Promise<void> {
    this.#telling = this.#telling.then(() => this.#tellNew());
    return this.#telling;
  }

  async close(): Promise<void> {
    clearInterval(this.#timer);
    await this.tell();
  }

  async #tellNew(): Promise<void> {
    const added = new Map([...this.#known].flatMap(([key, { since }]) => (since > 0 ? [[key, since] as const] : [])));
    if (added.size === 0) return;
    const counts = [...added].map(([key, count]) => ({ key, count }));
    try {
      for (const counted of await addTries(this.#db, counts, this.#windowMs)) this.#learn(counted, added);
    } catch (error) {
      this.#log.warn({ err: error }, "requests are counted by this process alone for now");
    }
  }

  #learn({ key, count, endsInMs }: Counted, added: ReadonlyMap<string, number>): void {
    const known = this.#known.get(key);
    const ours = added.get(key) ?? 0;
    if (known === undefined || known.since < ours) return; // its window ended meanwhile
    known.told = count;
    known.since -= ours;
    known.endsAtMs = Date.now() + Math.max(1, endsInMs);
  }

  #forgetEnded(nowMs: number): void {
    for (const [key, { endsAtMs }] of this.#known) if (endsAtMs <= nowMs) this.#known.delete(key);
    for (const key of this.#known.keys()) {
      if (this.#known.size < mostKeys) break;
      this.#known.delete(key);
    }
  }
}
