import type { ActionCase } from "./action-case.ts";
import type { ProjectValues } from "./loading-inputs.ts";

/** A pad, post or seat that something stands on. */
export type Support = { readonly elementId: string; readonly kind: "pad" | "post" | "seat" };

/** Level error of each support, high and low, and settlement of each pad, one at a time. */
export function movementCases(supports: readonly Support[], values: ProjectValues): ActionCase[] {
  return supports.flatMap(({ elementId, kind }) => [
    moved(`T ${elementId} low`, elementId, values.levelErrorMm),
    moved(`T ${elementId} high`, elementId, -values.levelErrorMm),
    ...(kind === "pad" ? [moved(`T ${elementId} settled`, elementId, values.settlementMm)] : []),
  ]);
}

const moved = (id: string, elementId: string, downMm: number): ActionCase => ({
  id,
  symbol: "T",
  loads: [{ kind: "movement", elementId, downMm }],
});
