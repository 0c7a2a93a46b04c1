import { lastInspection } from "@cornerway/schema";
import { mm, type Table, type TableSource } from "./table.ts";

/** Containers with their places, and what is known of the one that was assigned to each. */
export const unitsTable = ({ scheme, survey }: TableSource): Table => ({
  head: [
    ...["unit_id", "tag", "iso6346", "size_type", "made_in", "csc_no", "tare_kg", "gross_kg", "stack_kg", "racking_N"],
    ...["examined_on", "x_mm", "y_mm", "z_mm", "turn_deg", "survey_state"],
  ],
  rows: scheme.containers.map(({ id, tag, type, xUm, yUm, zUm, turnMdeg }) => {
    const assigned = survey.containers.find(({ position }) => position?.elementId === id);
    const inspection = assigned && lastInspection(assigned.container);
    const plate = inspection?.plate;
    return [
      ...[id, tag, assigned?.container.containerNumber ?? null, type],
      ...[plate?.madeIn ?? null, plate?.approvalNumber ?? null, plate?.tareKg ?? null, plate?.maxGrossKg ?? null],
      ...[plate?.stackingKg ?? null, plate?.rackingN ?? null, inspection?.day ?? null],
      ...[mm(xUm), mm(yUm), mm(zUm), turnMdeg / 1000, assigned?.state ?? null],
    ];
  }),
});
