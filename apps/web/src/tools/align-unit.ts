import { alignments, type Alignment } from "@cornerway/engine";
import { applyOperations, mmToUm, type Container, type Operation, type Scheme } from "@cornerway/schema";
import type { PlaceUm } from "./laying.ts";
import { moveUnit } from "./move-unit.ts";

/** Moves a unit to where its fittings land, and before it the unit below that has to make the gap. */
export function alignUnit(scheme: Scheme, unit: Container, { dxMm, dyMm, gap }: Alignment): Operation[] {
  const below = scheme.containers.find(({ id }) => id === gap?.move.id);
  const made =
    gap === undefined || below === undefined ? [] : moveUnit(scheme, movedBy(below, gap.move.dxMm, gap.move.dyMm));
  const applied = applyOperations(scheme, made);
  return applied.ok ? [...made, ...moveUnit(applied.scheme, movedBy(unit, dxMm, dyMm))] : [];
}

/** Where a unit would lie for its fittings to land, with nothing below moved; none for what is no unit. */
export function alignedPlaces(scheme: Scheme, id: string): PlaceUm[] {
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit === undefined) return [];
  return alignments(scheme, id)
    .filter(({ gap }) => gap === undefined)
    .map(({ dxMm, dyMm }) => movedBy(unit, dxMm, dyMm));
}

const movedBy = (unit: Container, dxMm: number, dyMm: number): Container => ({
  ...unit,
  xUm: unit.xUm + mmToUm(dxMm),
  yUm: unit.yUm + mmToUm(dyMm),
});
