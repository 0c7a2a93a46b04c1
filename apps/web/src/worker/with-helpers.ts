import { leastShared, runShared, type ShareElsewhere, type SharedWork } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";

/** Work shared with helpers where that pays; done alone where they cannot start, or once one has gone. */
export class WithHelpers {
  readonly #start: () => readonly ShareElsewhere[];
  #helpers: readonly ShareElsewhere[] | undefined;

  constructor(start: () => readonly ShareElsewhere[]) {
    this.#start = start;
  }

  /** `work` is told how many help; without helpers it asks nobody. */
  async run<Answer>({ containers }: Scheme, work: (helping: number) => SharedWork<Answer>): Promise<Answer> {
    const helpers = containers.length < leastShared ? [] : this.#started();
    try {
      return await done(work(helpers.length), helpers);
    } catch (error) {
      if (!helpers.some(({ isGone }) => isGone)) throw error;
      this.#helpers = [];
      return done(work(0), []);
    }
  }

  #started(): readonly ShareElsewhere[] {
    try {
      this.#helpers ??= this.#start();
    } catch {
      this.#helpers = []; // a browser that starts no worker from a worker: this thread does it alone
    }
    return this.#helpers;
  }
}

const done = <Answer>(work: SharedWork<Answer>, helpers: readonly ShareElsewhere[]): Promise<Answer> =>
  new Promise((settle, fail) => runShared(work, helpers, { settle, fail }));
