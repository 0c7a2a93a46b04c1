import type { Judgement, Scheme } from "@cornerway/schema";
import { compareVerdicts, type VerdictsCompared } from "./compare-verdicts.ts";
import type { Drawn } from "./drawn.ts";
import { supportsLost, type SupportLost } from "./supports-lost.ts";
import { stoodOnBy, type StoodOn } from "./stood-on.ts";

/** What one edit would do beyond what it draws, before it is drawn. */
export interface Impact {
  readonly verdicts: VerdictsCompared;
  /** What people gave that stands before the edit and would not after it. */
  readonly stale: readonly Judgement["of"][];
  readonly supports: readonly SupportLost[];
  /** What stood on something the edit takes away. */
  readonly stoodOn: readonly StoodOn[];
}

/**
 * What goes from `before` to `after` would undo: marks and verdicts that turn, judgements that go stale, posts and beams
 * that lose their load or their ground, and what stood on what is taken away. `standing` are the judgements to be looked at;
 * one that does not stand before the edit cannot be undone by it.
 */
export function impact(before: Drawn, after: Drawn, standing: readonly Judgement[]): Impact {
  return {
    verdicts: compareVerdicts(before.result, after.result),
    stale: standing.filter(({ stands }) => stands(before) && !stands(after)).map(({ of }) => of),
    supports: supportsLost(before, after),
    stoodOn: stoodOnBy(before.result, takenAway(before.scheme, after.scheme)),
  };
}

/** Ids of what can be stood on and is not there any more. */
function takenAway(before: Scheme, after: Scheme): string[] {
  const left = new Set(standable(after));
  return standable(before).filter((id) => !left.has(id));
}

const standable = ({ containers, posts, beams, pads }: Scheme): string[] =>
  [...containers, ...posts, ...beams, ...pads].map(({ id }) => id);
