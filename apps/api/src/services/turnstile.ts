/** Thrown when too many wait already: the work was not begun. */
export class TooBusy extends Error {
  constructor() {
    super("too many wait for this already");
  }
}

/** Lets through so many at a time; some more wait their turn, and the rest are turned away at once. */
export class Turnstile {
  readonly #atOnce: number;
  readonly #mostWaiting: number;
  readonly #waiting: (() => void)[] = [];
  #inside = 0;

  constructor({ atOnce, mostWaiting }: { atOnce: number; mostWaiting: number }) {
    this.#atOnce = atOnce;
    this.#mostWaiting = mostWaiting;
  }

  async pass<T>(work: () => Promise<T>): Promise<T> {
    if (this.#inside < this.#atOnce) this.#inside += 1;
    else await this.#wait();
    try {
      return await work();
    } finally {
      const next = this.#waiting.shift();
      if (next === undefined) this.#inside -= 1;
      else next(); // takes this one's place
    }
  }

  #wait(): Promise<void> {
    if (this.#waiting.length >= this.#mostWaiting) throw new TooBusy();
    return new Promise((go) => this.#waiting.push(go));
  }
}
