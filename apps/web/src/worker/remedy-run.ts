import { engineVersion } from "@cornerway/engine";
import {
  digestOf,
  type CostBook,
  type Remedy,
  type RemedyChange,
  type RemedyList,
  type Scheme,
} from "@cornerway/schema";
import { runsOfPage, type KnownRuns } from "./known-runs.ts";
import type { RemedyQuestion, RemedyWord } from "./remedy-messages.ts";

/** The part of a worker this needs. */
export interface RemedyThread {
  post(question: RemedyQuestion): void;
  listen(hear: (word: RemedyWord) => void): void;
  end(): void;
}

/** The ways to settle a mark as far as they are found. */
export interface RemediesSoFar {
  markId: string;
  /** The scheme they were found on. */
  scheme: Scheme;
  found: readonly Remedy[];
  /** The whole of it, once the search has ended by itself. */
  list: RemedyList | null;
  proving: RemedyChange | null;
  done: number;
  /** 0 until it is known. */
  of: number;
  state: "searching" | "searched" | "stopped";
  broke: string | null;
}

type Asked = { readonly markId: string; readonly scheme: Scheme; readonly book: CostBook; readonly key: string };

/**
 * One search at a time. A list that was made is kept by the digest of all that determines it. Another question ends a thread that is
 * searching; one that has ended its search takes the next, with what it knows of the scheme.
 */
export class RemedyRun {
  readonly #start: () => RemedyThread;
  readonly #tell: (so: RemediesSoFar | null) => void;
  readonly #known: Pick<KnownRuns, "of">;
  readonly #kept = new Map<string, RemedyList>();
  #thread: RemedyThread | null = null;
  #turn = 0;
  #asked: Asked | null = null;
  #so: RemediesSoFar | null = null;

  constructor(
    start: () => RemedyThread,
    tell: (so: RemediesSoFar | null) => void,
    known: Pick<KnownRuns, "of"> = runsOfPage,
  ) {
    this.#start = start;
    this.#tell = tell;
    this.#known = known;
  }

  ask(scheme: Scheme, markId: string, book: CostBook): void {
    const key = digestOf({ scheme, markId, book, engineVersion });
    if (this.#asked?.key === key && this.#so?.state !== "stopped") return;
    this.#leave();
    this.#asked = { scheme, markId, book, key };
    const begun = begin(scheme, markId);
    const kept = this.#kept.get(key);
    if (kept !== undefined) return this.#say(listed(begun, kept));
    this.#say(begun);
    this.#thread ??= this.#opened();
    const known = this.#known.of(scheme);
    this.#thread.post({ turn: this.#turn, scheme, markId, book, ...(known && { known }) });
  }

  #opened(): RemedyThread {
    const thread = this.#start();
    thread.listen((word) => {
      if (thread === this.#thread && word.turn === this.#turn) this.#hear(word);
    });
    return thread;
  }

  /** Ends a search under way; a thread without one is kept. */
  #leave(): void {
    if (this.#so?.state === "searching") this.end();
    this.#turn += 1;
  }

  /** Leaves the search with what it has found. */
  stop(): void {
    this.end();
    if (this.#so?.state === "searching") this.#say({ ...this.#so, state: "stopped", proving: null });
  }

  /** Puts the list away. */
  close(): void {
    this.#leave();
    this.#asked = null;
    this.#say(null);
  }

  /** Ends what is under way. */
  end(): void {
    this.#thread?.end();
    this.#thread = null;
    this.#turn += 1;
  }

  #hear(word: RemedyWord): void {
    const so = this.#so;
    if (so === null) return;
    if (word.kind === "broke") {
      this.end();
      return this.#say({ ...so, state: "stopped", proving: null, broke: word.why });
    }
    if (word.kind === "listed") {
      this.#keep(word.list);
      return this.#say(listed(so, word.list));
    }
    const { step } = word;
    const { done, of } = step;
    if (step.kind === "proving") return this.#say({ ...so, proving: step.change, done, of });
    // a search whose helper has gone begins anew
    const others = so.found.filter(({ id }) => id !== step.remedy.id);
    this.#say({ ...so, found: [...others, step.remedy], done, of });
  }

  #keep(list: RemedyList): void {
    if (this.#asked === null) return;
    this.#kept.set(this.#asked.key, list);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > MOST_KEPT && oldest !== undefined) this.#kept.delete(oldest);
  }

  #say(so: RemediesSoFar | null): void {
    this.#so = so;
    this.#tell(so);
  }
}

const MOST_KEPT = 12;

const begin = (scheme: Scheme, markId: string): RemediesSoFar => ({
  ...{ markId, scheme, found: [], list: null, proving: null },
  ...{ done: 0, of: 0, state: "searching", broke: null },
});

const listed = (so: RemediesSoFar, list: RemedyList): RemediesSoFar => ({
  ...so,
  ...{ found: [...list.offered, ...list.apart], list, proving: null, done: list.proved, of: list.proved },
  state: "searched",
});
