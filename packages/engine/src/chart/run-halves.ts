import type { ChartStep } from "./chart.ts";
import type { ChartAnswerOf, SharedChart } from "./opening-chart.ts";
import type { HalfWord } from "./other-half.ts";

/** What becomes of a chart. `breathe` goes on once words of another thread that have come are heard. */
export type ChartHeard = {
  readonly step: (step: ChartStep) => void;
  readonly settle: (answer: ChartAnswerOf) => void;
  readonly fail: (error: unknown) => void;
  readonly breathe: (goOn: () => void) => void;
};

/** Traces a chart while another thread traces its half: hears that between columns, and waits for it in the end. */
export class RunHalves {
  private readonly work: SharedChart;
  private readonly heard: ChartHeard;
  private words: HalfWord[] = [];
  private isWaiting = false;

  constructor(work: SharedChart, heard: ChartHeard) {
    [this.work, this.heard] = [work, heard];
  }

  goOn(): void {
    try {
      const next = this.work.next(this.words.splice(0));
      if (next.done === true) this.heard.settle(next.value);
      else if (next.value.kind === "awaits the other half") this.isWaiting = true;
      else {
        this.heard.step(next.value);
        this.heard.breathe(() => this.goOn());
      }
    } catch (error) {
      this.heard.fail(error);
    }
  }

  /** A word of the other thread; the first that one is awaited for goes on with it. */
  hear(word: HalfWord): void {
    this.words.push(word);
    if (!this.isWaiting) return;
    this.isWaiting = false;
    this.goOn();
  }
}
