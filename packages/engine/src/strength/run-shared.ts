import type { ShareElsewhere, Waiting } from "./share-elsewhere.ts";
import type { SharedStep, SharedWork } from "./shared-work.ts";

/**
 * Runs work that is shared: its asks go out to these helpers, and it goes on whenever it hears what it waits for. Whoever
 * waits is told the answer, or the first thing that stopped the work here or in a helper.
 */
export function runShared<Answer>(
  work: SharedWork<Answer>,
  helpers: readonly ShareElsewhere[],
  waiting: Waiting<Answer>,
): void {
  new RunShared(work, helpers, waiting).goOn(undefined);
}

class RunShared<Answer> {
  private readonly work: SharedWork<Answer>;
  private readonly helpers: readonly ShareElsewhere[];
  private readonly waiting: Waiting<Answer>;
  private readonly told = new Map<number, unknown>();
  private asks = 0;
  private awaited: number | undefined;
  private isOver = false;

  constructor(work: SharedWork<Answer>, helpers: readonly ShareElsewhere[], waiting: Waiting<Answer>) {
    [this.work, this.helpers, this.waiting] = [work, helpers, waiting];
  }

  /** Goes on with what was told, as far as it gets. */
  goOn(given: unknown): void {
    try {
      let next = this.work.next(given);
      while (next.done !== true) {
        if (this.isOver) return;
        const { value: step } = next;
        if ("toldOf" in step && !this.told.has(step.toldOf)) {
          this.awaited = step.toldOf;
          return;
        }
        next = this.work.next("toldOf" in step ? this.told.get(step.toldOf) : this.post(step));
      }
      this.isOver = true;
      this.waiting.settle(next.value);
    } catch (error) {
      this.fail(error instanceof Error ? error : new Error(String(error)));
    }
  }

  private post({ helper, ask }: Extract<SharedStep, { helper: number }>): number {
    const [number, thread] = [this.asks++, this.helpers[helper]];
    if (thread === undefined) throw new RangeError(`there is no helper ${helper}`);
    thread.ask(ask, { settle: (told) => this.hear(number, told), fail: (error) => this.fail(error) });
    return number;
  }

  private hear(number: number, told: unknown): void {
    this.told.set(number, told);
    if (this.isOver || this.awaited !== number) return;
    this.awaited = undefined;
    this.goOn(told);
  }

  private fail(error: Error): void {
    if (this.isOver) return;
    this.isOver = true;
    this.waiting.fail(error);
  }
}
