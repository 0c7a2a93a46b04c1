import type { Opening, Operation, RemedyChange } from "@cornerway/schema";
import { buildingOf } from "../../geometry/building.ts";
import type { UsedPart } from "../known-parts.ts";
import { openingsAt } from "../openings-at.ts";
import type { Trial } from "../trial.ts";
import { leastWidthMm, toUm } from "../ways/face-of-opening.ts";
import type { Lacking, Repair } from "./repair.ts";

/**
 * Openings that leave the mark as it is by the rail below them or by their frame: narrower about their middle by as much as that is
 * beyond its strength. A wall that is out stays so.
 */
export const narrowerOpeningsToo: Repair = (trial, lacking) => {
  const narrowed = narrowerThan(lacking).filter(
    ({ opening: { id, use }, toMm }) => use !== "open-wall" && toMm >= leastWidthMm[use] && !isChangedBy(trial, id),
  );
  return narrowed.length === 0 ? undefined : narrowed.reduce(withNarrower, trial);
};

type Narrower = { readonly opening: Opening; readonly toMm: number };

function narrowerThan({ tried, unsettled }: Lacking): Narrower[] {
  const { unitById } = buildingOf(tried);
  const widths = new Map<string, Narrower>();
  for (const part of unsettled) {
    const unit = unitById.get(part.ownerId);
    if (unit === undefined || !Number.isFinite(part.use)) continue;
    for (const opening of openingsAt(tried, unit, [part.place])) {
      const toMm = Math.min(widthFor(opening, part), widths.get(opening.id)?.toMm ?? Infinity);
      widths.set(opening.id, { opening, toMm });
    }
  }
  return [...widths.values()].toSorted((a, b) => (a.opening.id < b.opening.id ? -1 : 1));
}

/** Bending of the rail below grows at least with the width: so much less of it, in steps, and one step more. */
const widthFor = ({ widthUm }: Opening, { use }: UsedPart): number =>
  Math.floor(widthUm / 1000 / use / STEP_MM) * STEP_MM - STEP_MM;
const STEP_MM = 50;

/** An opening that is the change itself is left as that has it. */
const isChangedBy = ({ change }: Trial, openingId: string): boolean =>
  ("openingId" in change && change.openingId === openingId) ||
  ("openingIds" in change && change.openingIds.includes(openingId));

function withNarrower(trial: Trial, { opening, toMm }: Narrower): Trial {
  const { id } = opening;
  const also = trial.also ?? [];
  const before = also.find((one) => one.kind === "narrow opening" && one.openingId === id);
  const fromMm = before?.kind === "narrow opening" ? before.fromMm : opening.widthUm / 1000;
  const change: RemedyChange = { kind: "narrow opening", openingId: id, fromMm, toMm, from: "both sides" };
  const offsetUm = opening.offsetUm + Math.round((opening.widthUm - toUm(toMm)) / 2);
  const { sillUm, heightUm } = opening;
  const operation: Operation = { kind: "opening.shape", id, offsetUm, sillUm, widthUm: toUm(toMm), heightUm };
  return {
    ...trial,
    operations: [...trial.operations.filter((one) => one.kind !== "opening.shape" || one.id !== id), operation],
    also: [...also.filter((one) => one !== before), change],
  };
}
