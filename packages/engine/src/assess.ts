import type { Assessment, Scheme } from "@cornerway/schema";
import { engineVersion } from "./engine-version.ts";
import { storeysOf } from "./geometry/storeys.ts";
import { weightsOf } from "./load-path/weights.ts";

/** What the engine says of a scheme. Pure: the same scheme gives the same bits everywhere. */
export function assess(scheme: Scheme): Assessment {
  const weights = weightsOf(scheme);
  const storeyById = new Map(
    storeysOf(scheme).flatMap(({ index, containerIds }) => containerIds.map((id) => [id, index])),
  );
  return {
    engineVersion,
    verdict: "not checked",
    scope: "load path only, no strength checked",
    units: weights.map(({ id, weightKn, imposedKn }) => ({
      id,
      storey: storeyById.get(id) ?? 0,
      verdict: "not checked",
      weightKn,
      imposedKn,
    })),
    bearings: [],
    path: [],
    marks: [],
    statics: { loadKn: 0, reactionKn: 0, residualKn: 0, reactions: [] },
    questions: 0,
  };
}
