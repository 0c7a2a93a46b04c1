import type { Scheme } from "@cornerway/schema";
import type { GoverningVectors, LiveStrength } from "../strength/live-strength.ts";
import { ask, told, type Asked, type SharedWork } from "../strength/shared-work.ts";
import { withOwners } from "./governing-anywhere.ts";
import { newElements } from "./new-elements.ts";
import type { RemedyTools } from "./remedy-tools.ts";
import type { Trial } from "./trial.ts";

/** A look is never more than the whole run says: it does not ask how the building leans, and enlarges no level load by that. */
export const NOT_ENLARGED = 1;

/** A change and the scheme it makes. */
export type Looked = { readonly scheme: Scheme; readonly trial: Trial };

/**
 * Looks at changes. While this thread looks at one, a helper looks at one that comes after it: what he told is taken if the same
 * vectors govern when its turn comes, and nothing is told otherwise than without him.
 */
export class LooksAhead {
  private readonly tools: Pick<RemedyTools, "look" | "helping">;
  private readonly asked = new Map<Scheme, { readonly governed: GoverningVectors; readonly look: Asked<"look"> }>();

  constructor(tools: Pick<RemedyTools, "look" | "helping">) {
    this.tools = tools;
  }

  *look(drawn: Looked, coming: readonly Looked[], governed: GoverningVectors): SharedWork<LiveStrength> {
    const ahead = this.asked.get(drawn.scheme);
    this.asked.delete(drawn.scheme);
    if (ahead?.governed === governed) return yield* told(ahead.look);
    const next = coming.slice(0, MOST_AHEAD).find(({ scheme }) => this.asked.get(scheme)?.governed !== governed);
    if (this.tools.helping > 0 && next !== undefined) {
      const what = { work: "look", scheme: next.scheme, governed: forThis(next, governed) } as const;
      this.asked.set(next.scheme, { governed, look: yield* ask(0, { ...what, enlargement: NOT_ENLARGED }) });
    }
    return this.tools.look(drawn.scheme, forThis(drawn, governed));
  }
}

/** A change may turn out to do, and then those after it of its kind are not looked at. */
const MOST_AHEAD = 2;

/** What is new has governed nothing yet: it is held against every vector that governed anything. */
const forThis = ({ trial }: Looked, governed: GoverningVectors): GoverningVectors =>
  withOwners(governed, newElements(trial.operations));
