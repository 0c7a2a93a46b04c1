import type { DesignBasis } from "@cornerway/schema";
import { toMm } from "../units.ts";
import type { ActionCase } from "./action-case.ts";

/** A pad, post or seat that something stands on, with what is known of it; else the project's values. */
export type Support = {
  readonly elementId: string;
  readonly kind: "pad" | "post" | "seat";
  readonly levelErrorUm?: number | undefined;
  readonly settlementUm?: number | undefined;
};

/**
 * Level error of each support, high and low, and settlement of each pad, one at a time. A level that was measured is one
 * case as built.
 */
export function movementCases(
  supports: readonly Support[],
  project: Pick<DesignBasis, "levelErrorUm" | "settlementUm">,
): ActionCase[] {
  return supports.flatMap(({ elementId, kind, levelErrorUm, settlementUm }) => [
    ...(levelErrorUm === undefined
      ? [
          moved(`T ${elementId} low`, elementId, toMm(project.levelErrorUm)),
          moved(`T ${elementId} high`, elementId, -toMm(project.levelErrorUm)),
        ]
      : [moved(`T ${elementId} as built`, elementId, -toMm(levelErrorUm))]),
    ...(kind === "pad" ? [moved(`T ${elementId} settled`, elementId, toMm(settlementUm ?? project.settlementUm))] : []),
  ]);
}

const moved = (id: string, elementId: string, downMm: number): ActionCase => ({
  id,
  symbol: "T",
  loads: [{ kind: "movement", elementId, downMm }],
});
