import { placeContainer } from "@cornerway/engine";
import type { Cell } from "../description/csv.ts";
import { mm, to, verdictOn, type Table, type TableSource } from "./table.ts";

/**
 * Where each opening is cut, container by container, from the outer faces of the corner fittings. Along the face and up it
 * the sizes add up to the whole; what is left to the posts and rails is their nearest edge.
 */
export const cutPlanTable = ({ scheme, assessment }: TableSource): Table => ({
  head: [
    ...["unit_id", "opening_id", "tag", "face", "from_fitting_mm", "width_mm", "to_far_fitting_mm", "face_length_mm"],
    ...["sill_mm", "height_mm", "above_mm", "face_height_mm", "clear_to_post_mm", "clear_to_rail_mm"],
    ...["cut", "jamb", "header", "sill_section", "verdict"],
  ],
  rows: scheme.containers.flatMap((container) => {
    const { dimensions } = placeContainer(container);
    return scheme.openings
      .filter(({ containerId }) => containerId === container.id)
      .map((opening): Cell[] => {
        const whole = dimensions.face(opening.face);
        const sheet = dimensions.sheetZone(opening.face);
        const [from, up] = [mm(opening.offsetUm), mm(opening.sillUm)];
        const [wide, high] = [mm(opening.widthUm), mm(opening.heightUm)];
        return [
          ...[container.id, opening.id, opening.tag, opening.face],
          ...[from, wide, to(whole.u1 - from - wide, 3), whole.u1],
          ...[up, high, to(whole.v1 - up - high, 3), whole.v1],
          to(Math.min(from - sheet.u0, sheet.u1 - from - wide), 3),
          to(Math.min(up - sheet.v0, sheet.v1 - up - high), 3),
          opening.cut ?? "in the yard",
          ...[opening.framing?.jamb ?? null, opening.framing?.header ?? null, opening.framing?.sill ?? null],
          verdictOn(assessment, opening.id),
        ];
      });
  }),
});
