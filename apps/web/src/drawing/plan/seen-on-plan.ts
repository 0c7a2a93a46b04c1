import type { Scheme } from "@cornerway/schema";
import { storeysOf } from "@cornerway/engine";

/** The scheme with only the units a plan of one storey shows: those cut, those overhead and those below. */
export function seenOnPlan(scheme: Scheme, storey: number): Scheme {
  const ids = new Set(
    storeysOf(scheme)
      .filter(({ index }) => Math.abs(index - storey) <= 1)
      .flatMap(({ containerIds }) => containerIds),
  );
  const containers = scheme.containers.filter(({ id }) => ids.has(id));
  return containers.length === 0 ? scheme : { ...scheme, containers };
}
