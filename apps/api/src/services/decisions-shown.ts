import type { Decision, DecisionShown, Digest } from "@cornerway/schema";

/** What a decision is held against: the latest revision and the cost book as they are now. */
export interface Now {
  latest: { letter: string; contentDigest: Digest };
  costBookDigest: Digest;
}

/** Decisions in the order they were made, each with what has changed since and whether it is the last word. */
export function decisionsShown(decisions: readonly Decision[], now: Now): DecisionShown[] {
  const lastOn = new Map(decisions.map((decision) => [subjectOf(decision), decision.id]));
  return decisions.map((decision) => ({
    decision,
    stale: [
      ...(contentChanged(decision, now) ? ["content" as const] : []),
      ...(decision.costBookDigest === now.costBookDigest ? [] : ["cost book" as const]),
    ],
    latest: lastOn.get(subjectOf(decision)) === decision.id,
  }));
}

const subjectOf = ({ revision, requestId }: Decision): string => requestId ?? revision;

/** Revisions and requests never change; a newer revision with other content takes their place. */
const contentChanged = ({ revision, contentDigest }: Decision, { latest }: Now): boolean =>
  revision !== latest.letter && contentDigest !== latest.contentDigest;
