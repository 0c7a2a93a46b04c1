import type { Assessment, CostBook, Premium, Scheme } from "@cornerway/schema";
import type { AssessAnswer, AssessQuestion } from "./messages.ts";

/** The part of a worker this needs. */
export interface EngineLine {
  post(question: AssessQuestion): void;
  listen(hear: (answer: AssessAnswer) => void): void;
}

export interface Assessed {
  /** The scheme the answer was given for. */
  scheme: Scheme;
  assessment: Assessment | null;
  /** By the book it was asked with; null without one. */
  premium: Premium | null;
  /** What the engine said when it broke; then nothing is checked. */
  broke: string | null;
}

/**
 * Asks the engine about the latest scheme only: while one answer is awaited, newer schemes replace each other, so a
 * drag never builds a queue.
 */
export class LatestAssessment {
  readonly #line: EngineLine;
  readonly #tell: (assessed: Assessed) => void;
  #turn = 0;
  #asked: Scheme | null = null;
  #next: { scheme: Scheme; book: CostBook | null } | null = null;

  constructor(line: EngineLine, tell: (assessed: Assessed) => void) {
    this.#line = line;
    this.#tell = tell;
    line.listen((answer) => this.#hear(answer));
  }

  ask(scheme: Scheme, book: CostBook | null = null): void {
    this.#next = { scheme, book };
    if (this.#asked === null) this.#post();
  }

  #post(): void {
    if (this.#next === null) return;
    const { scheme, book } = this.#next;
    this.#asked = scheme;
    this.#next = null;
    this.#turn += 1;
    this.#line.post({ turn: this.#turn, scheme, book });
  }

  #hear(answer: AssessAnswer): void {
    const scheme = this.#asked;
    if (scheme === null || answer.turn !== this.#turn) return;
    this.#asked = null;
    if ("broke" in answer) this.#tell({ scheme, assessment: null, premium: null, broke: answer.broke });
    else this.#tell({ scheme, assessment: answer.assessment, premium: answer.premium, broke: null });
    this.#post();
  }
}
