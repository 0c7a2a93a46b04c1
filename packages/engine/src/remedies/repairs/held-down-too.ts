import type { RemedyChange } from "@cornerway/schema";
import { analyse } from "../../load-path/analysis.ts";
import { FreshNames } from "../fresh-names.ts";
import { heldAt, kindOfHolds } from "../held-at.ts";
import type { Repair } from "./repair.ts";

/**
 * What is pulled or pushed because of the change and nothing drawn holds: made fast where it bears. Not with ties: where units have
 * to be made fast all the same, ties do nothing for them.
 */
export const heldDownToo: Repair = (trial, { tried, holds }) => {
  if (trial.change.kind === "ties") return undefined;
  const unitIds = [...new Set(holds.map(({ ownerId }) => ownerId))]
    .filter((id) => tried.containers.some((unit) => unit.id === id))
    .toSorted();
  const names = new FreshNames(tried);
  const analysis = analyse(tried);
  const each = unitIds.map((unitId) => ({ unitId, operations: heldAt(tried, analysis, names, [unitId]) }));
  const found = each.filter(({ operations }) => operations.length > 0);
  if (found.length === 0) return undefined;
  const also = found.map(({ unitId, operations }): RemedyChange => ({
    ...{ kind: "made connections", unitId, places: operations.length, as: kindOfHolds(operations) },
  }));
  return {
    ...trial,
    operations: [...trial.operations, ...found.flatMap(({ operations }) => operations)],
    also: [...(trial.also ?? []), ...also],
  };
};
