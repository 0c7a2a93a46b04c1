import type { KnownRun, LivePart } from "@cornerway/engine";
import type { Assessment, CheckWorking, Scheme, StrengthReport } from "@cornerway/schema";
import type { ForcesAnswer, StrengthQuestion, StrengthWord } from "./strength-messages.ts";

/** The part of a worker this needs. */
export interface StrengthThread {
  post(question: StrengthQuestion): void;
  listen(hear: (word: StrengthWord) => void): void;
  end(): void;
}

/** What strength said of a scheme: its answer, or why there is none. */
export interface Judged {
  /** Numbers the answers of this page. */
  answer: number;
  scheme: Scheme;
  assessment: Assessment | null;
  /** Null where strength could not be judged. */
  report: StrengthReport | null;
  broke: string | null;
}

let answers = 0;

/** What a few vectors say at once of a scheme that is being judged, worst first. No answer. */
export interface Glance {
  scheme: Scheme;
  parts: readonly LivePart[];
  vectors: number;
}

export interface StrengthTold {
  judged: (judged: Judged) => void;
  progress: (scheme: Scheme, done: number, of: number) => void;
  glance: (glance: Glance) => void;
  /** What was judged, for what is asked of the same drawing next. */
  known: (known: KnownRun) => void;
}

/**
 * One strength run at a time, on the latest scheme asked about. A run that is under way when another scheme comes is
 * ended with its thread; the thread that answered stays and gives the workings of its answer.
 */
export class StrengthRun {
  readonly #start: () => StrengthThread;
  readonly #told: StrengthTold;
  #thread: StrengthThread | null = null;
  #turn = 0;
  #asked: Scheme | null = null;
  #forcesTurn = 0;
  #forces: ((answer: ForcesAnswer | { why: string } | null) => void) | null = null;
  #waiting = new Map<string, ((working: CheckWorking | null) => void)[]>();

  constructor(start: () => StrengthThread, told: StrengthTold) {
    this.#start = start;
    this.#told = told;
  }

  /** Ends a run under way on another scheme than this one. */
  leave(scheme: Scheme): void {
    if (this.#asked !== null && this.#asked !== scheme) this.stop();
  }

  ask(scheme: Scheme): void {
    if (this.#asked !== null) this.stop();
    this.#settle();
    this.#asked = scheme;
    this.#turn += 1;
    this.#open().post({ kind: "judge", turn: this.#turn, scheme });
  }

  /** Ends what is under way, and with it what was kept for workings. */
  stop(): void {
    this.#thread?.end();
    this.#thread = null;
    this.#asked = null;
    this.#settle();
  }

  /** A working of the last answer; null where there is none under this name, or the answer is gone. */
  workingOf(id: string): Promise<CheckWorking | null> {
    const thread = this.#thread;
    if (thread === null || this.#asked !== null) return Promise.resolve(null);
    return new Promise((resolve) => {
      this.#waiting.set(id, [...(this.#waiting.get(id) ?? []), resolve]);
      thread.post({ kind: "working", id });
    });
  }

  /** Forces of one run of a scheme; null while a scheme is judged, and where another question or an end came between. */
  forcesOf(scheme: Scheme, runs: readonly string[]): Promise<ForcesAnswer | { why: string } | null> {
    if (this.#asked !== null) return Promise.resolve(null);
    this.#tellForces(null);
    return new Promise((resolve) => {
      this.#forces = resolve;
      this.#open().post({ kind: "forces", turn: this.#forcesTurn, scheme, runs });
    });
  }

  #open(): StrengthThread {
    if (this.#thread !== null) return this.#thread;
    const thread = this.#start();
    thread.listen((word) => {
      if (thread === this.#thread) this.#hear(word);
    });
    this.#thread = thread;
    return thread;
  }

  #hear(word: StrengthWord): void {
    if (word.kind === "working") return this.#settle(word.id, word.working);
    if (word.kind === "forces") return word.turn === this.#forcesTurn ? this.#tellForces(word.answer) : undefined;
    if (word.kind === "known") return this.#told.known(word.known);
    const scheme = this.#asked;
    if (scheme === null || word.turn !== this.#turn) return;
    if (word.kind === "glance") return this.#told.glance({ scheme, parts: word.parts, vectors: word.vectors });
    if (word.kind === "progress") return this.#told.progress(scheme, word.done, word.of);
    this.#asked = null;
    answers += 1;
    const told = { answer: answers, scheme };
    if (word.kind === "broke") this.#told.judged({ ...told, assessment: null, report: null, broke: word.why });
    else this.#told.judged({ ...told, assessment: word.assessment, report: word.report, broke: null });
  }

  /** Answers whoever waits for forces; what comes later is of an earlier question. */
  #tellForces(answer: ForcesAnswer | { why: string } | null): void {
    this.#forces?.(answer);
    this.#forces = null;
    this.#forcesTurn += 1;
  }

  /** Answers whoever waits for one working, or for any and for forces. */
  #settle(id?: string, working: CheckWorking | null = null): void {
    if (id === undefined) this.#tellForces(null);
    for (const [key, resolves] of this.#waiting)
      if (id === undefined || key === id) {
        this.#waiting.delete(key);
        for (const resolve of resolves) resolve(working);
      }
  }
}
