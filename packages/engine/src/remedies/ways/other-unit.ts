import type { ContainerType, Operation } from "@cornerway/schema";
import { containerDimensions } from "../../catalog/container-dimensions.ts";
import { toSite } from "../../geometry/place.ts";
import type { Generator, Trial } from "../trial.ts";

/**
 * A shorter unit of the same height in its place, on the bearings it has: the end that reaches out comes back. The end that bears
 * stays where it is.
 */
export const otherUnit: Generator = ({ scheme, analysis, mark }) => {
  const unit = analysis.structure.building.unitById.get(mark.elements[0] ?? "");
  const container = scheme.containers.find(({ id }) => id === unit?.id);
  const run = analysis.run.units.find(({ unitId }) => unitId === unit?.id);
  if (unit === undefined || container === undefined || run === undefined || run.contacts.length === 0) return [];
  const along = run.contacts.map(({ localXMm }) => localXMm);
  const sign = along.reduce((sum, xMm) => sum + xMm, 0) < 0 ? -1 : 1;
  const shorter = SHORTER[container.type] ?? [];
  const trials = shorter.map((type): Trial => {
    const byMm = (sign * (unit.dimensions.lengthMm - containerDimensions(type).lengthMm)) / 2;
    const { xMm, yMm } = toSite(unit.frame, { xMm: byMm, yMm: 0, zMm: 0 });
    const after = { ...container, type, xUm: Math.round(xMm * 1000), yUm: Math.round(yMm * 1000) };
    const operations: Operation[] = [{ kind: "container.change", container: after }];
    return { change: { kind: "other unit", unitId: container.id, type }, operations };
  });
  return trials.length === 0 ? [] : [trials];
};

/** Types of the same height that are shorter, the longest first (ISO 668). */
const SHORTER: Partial<Record<ContainerType, readonly ContainerType[]>> = {
  "1EEE": ["1AAA", "1BBB", "1CCC"],
  "1EE": ["1AA", "1BB", "1CC"],
  "1AAA": ["1BBB", "1CCC"],
  "1AA": ["1BB", "1CC"],
  "1A": ["1C"],
  "1BBB": ["1CCC"],
  "1BB": ["1CC"],
};
