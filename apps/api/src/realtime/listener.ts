import { randomUUID } from "node:crypto";
import type { FastifyBaseLogger } from "fastify";
import postgres from "postgres";
import { z } from "zod";

const recordChannel = "cornerway_record";
const presenceChannel = "cornerway_presence";
const progressChannel = "cornerway_progress";
const beatMs = 10_000;
/** A beat that does not come back by the second one after it means that nobody listens any more. */
const silenceMs = 2.5 * beatMs;
/** PostgreSQL takes up to 7 999 bytes (documentation of NOTIFY). */
const longestNotice = 7999;

const Notice = z.object({ project: z.string(), number: z.number() });
const Progress = z.object({ project: z.string(), letter: z.string() });
const Envelope = z.object({ from: z.string(), body: z.unknown() });

export interface Heard {
  /** A record has grown, or was erased, which is number 0; it says so by project and number only. */
  entry(projectId: string, number: number): void;
  /** A run of the engine on a revision is further on. */
  progress(projectId: string, letter: string): void;
  /** What another process said. */
  word(body: unknown): void;
  /** Notices may have been missed: at every new subscription, and at every beat. */
  readAgain(): void;
}

/**
 * Listens on a connection of its own. Notices are hints and nothing rests on them alone: whatever they lead to is read
 * from the record, at every notice, every new subscription and every ten seconds.
 */
export class Listener {
  readonly #url: string;
  readonly #heard: Heard;
  readonly #log: FastifyBaseLogger;
  readonly #me = randomUUID();
  #sql: postgres.Sql;
  #lastBeat = Date.now();
  #timer: NodeJS.Timeout | undefined;

  constructor(url: string, heard: Heard, log: FastifyBaseLogger) {
    this.#url = url;
    this.#heard = heard;
    this.#log = log;
    this.#sql = connect(url);
  }

  /** Resolves once all channels are subscribed. */
  async start(): Promise<void> {
    await this.#subscribe();
    this.#timer = setInterval(() => this.#beat(), beatMs);
  }

  /** Tells every other process; false when it is too long to be told. */
  tell(body: unknown): boolean {
    const notice = JSON.stringify({ from: this.#me, body });
    if (Buffer.byteLength(notice) > longestNotice) return false;
    this.#sql
      .notify(presenceChannel, notice)
      .catch((error: unknown) => this.#log.warn({ err: error }, "could not tell the other processes"));
    return true;
  }

  async close(): Promise<void> {
    clearInterval(this.#timer);
    await this.#sql.end({ timeout: 1 });
  }

  async #subscribe(): Promise<void> {
    await this.#sql.listen(
      recordChannel,
      (text) => this.#entry(text),
      () => this.#heard.readAgain(),
    );
    await this.#sql.listen(presenceChannel, (text) => this.#word(text));
    await this.#sql.listen(progressChannel, (text) => this.#progress(text));
    this.#lastBeat = Date.now();
  }

  #entry(text: string): void {
    const { project, number } = Notice.parse(JSON.parse(text));
    this.#heard.entry(project, number);
  }

  #progress(text: string): void {
    const { project, letter } = Progress.parse(JSON.parse(text));
    this.#heard.progress(project, letter);
  }

  #word(text: string): void {
    const { from, body } = Envelope.parse(JSON.parse(text));
    if (from === this.#me) this.#lastBeat = Date.now();
    else if (body !== undefined && body !== null) this.#heard.word(body);
  }

  /** `listen` subscribes again by itself after a lost connection, but gives up when the database is away just then. */
  #beat(): void {
    this.#heard.readAgain();
    this.tell(null);
    if (Date.now() - this.#lastBeat < silenceMs) return;
    this.#log.warn("nothing is heard from the database; listening anew");
    const before = this.#sql;
    this.#sql = connect(this.#url);
    before
      .end({ timeout: 1 })
      .catch((error: unknown) => this.#log.warn({ err: error }, "the old connection did not end"));
    this.#lastBeat = Date.now();
    this.#subscribe().catch((error: unknown) => this.#log.warn({ err: error }, "could not listen; trying again"));
  }
}

/** Without `fetch_types`, whose own query at each new connection fails past every catch when the database is away. */
const connect = (url: string): postgres.Sql =>
  postgres(url, { max: 1, connect_timeout: 5, fetch_types: false, onnotice: () => undefined });
