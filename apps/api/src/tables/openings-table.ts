import { mm, verdictOn, type Table, type TableSource } from "./table.ts";

/** Openings with their places from the outer faces of the fittings. */
export const openingsTable = ({ scheme, assessment }: TableSource): Table => ({
  head: [
    ...["opening_id", "tag", "unit_id", "face", "use", "from_fitting_mm", "sill_mm", "width_mm", "height_mm", "cut"],
    ...["jamb", "header", "sill_section", "verdict"],
  ],
  rows: scheme.openings.map((opening) => [
    ...[opening.id, opening.tag, opening.containerId, opening.face, opening.use],
    ...[mm(opening.offsetUm), mm(opening.sillUm), mm(opening.widthUm), mm(opening.heightUm)],
    opening.cut ?? "in the yard",
    ...[opening.framing?.jamb ?? null, opening.framing?.header ?? null, opening.framing?.sill ?? null],
    verdictOn(assessment, opening.id),
  ]),
});
