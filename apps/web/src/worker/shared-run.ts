import {
  leastShared,
  runShared,
  type ShareElsewhere,
  type Strength,
  type StrengthWhileDrawing,
  type TellProgress,
} from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";

/** Full runs, shared with helpers where that pays; alone where they cannot start, or once one has gone. */
export class SharedRun {
  readonly #drawing: Pick<StrengthWhileDrawing, "full" | "fullShared">;
  readonly #start: () => readonly ShareElsewhere[];
  #helpers: readonly ShareElsewhere[] | undefined;

  constructor(drawing: Pick<StrengthWhileDrawing, "full" | "fullShared">, start: () => readonly ShareElsewhere[]) {
    this.#drawing = drawing;
    this.#start = start;
  }

  async full(scheme: Scheme, tell?: TellProgress): Promise<Strength> {
    const helpers = scheme.containers.length < leastShared ? [] : this.#started();
    if (helpers.length === 0) return this.#drawing.full(scheme, tell);
    try {
      const work = this.#drawing.fullShared(scheme, helpers.length, tell);
      return await new Promise((settle, fail) => runShared(work, helpers, { settle, fail }));
    } catch (error) {
      if (!helpers.some(({ isGone }) => isGone)) throw error;
      this.#helpers = [];
      return this.#drawing.full(scheme, tell);
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
