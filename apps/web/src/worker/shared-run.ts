import type { ShareElsewhere, Strength, StrengthWhileDrawing, TellProgress } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { WithHelpers } from "./with-helpers.ts";

/** Full runs, shared with helpers where that pays. */
export class SharedRun {
  readonly #drawing: Pick<StrengthWhileDrawing, "fullShared">;
  readonly #helped: WithHelpers;

  constructor(drawing: Pick<StrengthWhileDrawing, "fullShared">, start: () => readonly ShareElsewhere[]) {
    this.#drawing = drawing;
    this.#helped = new WithHelpers(start);
  }

  full(scheme: Scheme, tell?: TellProgress): Promise<Strength> {
    return this.#helped.run(scheme, (helping) => this.#drawing.fullShared(scheme, helping, tell));
  }
}
