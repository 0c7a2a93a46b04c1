/** A thread that is asked in turns, each answer naming the turn it is of. */
export interface TurnLine<Question, Answer> {
  post(question: Question & { turn: number }): void;
  listen(hear: (answer: Answer & { turn: number }) => void): void;
}

/** Asks the latest question only: while one answer is awaited, newer questions replace each other, so a drag never builds a queue. */
export class LatestOnly<Question extends object, Answer extends object> {
  readonly #line: TurnLine<Question, Answer>;
  readonly #tell: (question: Question, answer: Answer) => void;
  #turn = 0;
  #asked: Question | null = null;
  #next: Question | null = null;

  constructor(line: TurnLine<Question, Answer>, tell: (question: Question, answer: Answer) => void) {
    this.#line = line;
    this.#tell = tell;
    line.listen((answer) => this.#hear(answer));
  }

  ask(question: Question): void {
    this.#next = question;
    if (this.#asked === null) this.#post();
  }

  #post(): void {
    if (this.#next === null) return;
    this.#asked = this.#next;
    this.#next = null;
    this.#turn += 1;
    this.#line.post({ ...this.#asked, turn: this.#turn });
  }

  #hear(answer: Answer & { turn: number }): void {
    const asked = this.#asked;
    if (asked === null || answer.turn !== this.#turn) return;
    this.#asked = null;
    this.#tell(asked, answer);
    this.#post();
  }
}
