/**
 * Lets one piece of work per key run at a time within this process. Acts on one project wait for each other at its row
 * lock anyway; waiting here instead keeps them from holding a database connection each while they do.
 */
export class Turns {
  readonly #tails = new Map<string, Promise<unknown>>();

  async take<T>(key: string, work: () => Promise<T>): Promise<T> {
    const before = this.#tails.get(key) ?? Promise.resolve();
    const turn = before.then(work);
    const tail = turn.catch(() => undefined); // the next in line does not share this one's fault; its caller gets it
    this.#tails.set(key, tail);
    try {
      return await turn;
    } finally {
      if (this.#tails.get(key) === tail) this.#tails.delete(key);
    }
  }
}
