import { lastInspection } from "@cornerway/schema";
import type { Cell } from "../description/csv.ts";
import { mm, type Table, type TableSource } from "./table.ts";

/** What the last inspection of each container found: each damage and each thickness on a line of its own, against the limits. */
export const surveyTable = ({ survey }: TableSource): Table => ({
  head: [
    ...["iso6346", "size_type", "state", "position", "inspected_on", "inspected_by", "found", "member", "place"],
    ...["size_mm", "measured_with", "floor_treatment", "photos"],
  ],
  rows: survey.containers.flatMap(({ container, state, position }): Cell[][] => {
    const inspection = lastInspection(container);
    const own: Cell[] = [
      ...[container.containerNumber, container.type, state, position?.tag ?? null],
      ...[inspection?.day ?? null, inspection?.by.name ?? null],
    ];
    if (inspection === undefined) return [[...own, "not inspected", null, null, null, null, null, null]];
    const { damages, thicknesses, measuredWith, floor, photos } = inspection;
    const rest = [measuredWith, floor, photos.length];
    const found: Cell[][] = [
      ...damages.map(({ kind, member, place, sizeUm }): Cell[] => [kind, member, place, mm(sizeUm)]),
      ...thicknesses.map(({ member, thicknessUm }): Cell[] => ["thickness", member, null, mm(thicknessUm)]),
    ];
    const lines: Cell[][] = found.length === 0 ? [["nothing noted", null, null, null]] : found;
    return lines.map((line) => [...own, ...line, ...rest]);
  }),
});
