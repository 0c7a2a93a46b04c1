import { nameOf, type KnownRun } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";

/** Full runs that threads of this page have made, for what is asked of the same drawings next. */
export class KnownRuns {
  readonly #kept = new Map<string, KnownRun>();

  keep(known: KnownRun): void {
    this.#kept.delete(known.of);
    this.#kept.set(known.of, known);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > MOST_KEPT && oldest !== undefined) this.#kept.delete(oldest);
  }

  of(scheme: Scheme): KnownRun | undefined {
    return this.#kept.size === 0 ? undefined : this.#kept.get(nameOf(scheme));
  }
}

/** Each is about half a megabyte for nine containers. */
const MOST_KEPT = 4;

export const runsOfPage = new KnownRuns();
