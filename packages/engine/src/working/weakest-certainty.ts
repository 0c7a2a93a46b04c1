import type { Certainty } from "@cornerway/schema";

/** What a result resting on all of these can claim. */
export const weakestCertainty = (certainties: readonly Certainty[]): Certainty =>
  certainties.reduce<Certainty>((weakest, next) => (rank[next] > rank[weakest] ? next : weakest), "published");

const rank: Readonly<Record<Certainty, number>> = { published: 0, derived: 1, memory: 2, "common practice": 3 };
