import type { Assessment, CostBook, Premium, Scheme } from "@cornerway/schema";
import { LatestOnly, type TurnLine } from "./latest-only.ts";
import type { AssessAnswer, ToAssess } from "./messages.ts";

/** The part of a worker this needs. */
export type EngineLine = TurnLine<ToAssess, AssessAnswer>;

export interface Assessed {
  /** The scheme the answer was given for. */
  scheme: Scheme;
  assessment: Assessment | null;
  /** By the book it was asked with; null without one. */
  premium: Premium | null;
  /** What the engine said when it broke; then nothing is checked. */
  broke: string | null;
}

/** Asks the engine about the latest scheme only. */
export class LatestAssessment {
  readonly #latest: LatestOnly<ToAssess, AssessAnswer>;

  constructor(line: EngineLine, tell: (assessed: Assessed) => void) {
    this.#latest = new LatestOnly(line, ({ scheme }, answer) =>
      tell(
        "broke" in answer
          ? { scheme, assessment: null, premium: null, broke: answer.broke }
          : { scheme, assessment: answer.assessment, premium: answer.premium, broke: null },
      ),
    );
  }

  ask(scheme: Scheme, book: CostBook | null = null): void {
    this.#latest.ask({ scheme, book });
  }
}
