import { hypot } from "@cornerway/engine";
import type { Cell } from "../description/csv.ts";
import { mm, to, type Table, type TableSource } from "./table.ts";

/**
 * Steel that is added: posts, beams and the framing of openings, each by its section. What a container has of its own is in
 * the generic specification, and is no schedule of this building.
 */
export const membersTable = ({ scheme }: TableSource): Table => ({
  head: ["member_id", "tag", "unit_id", "family", "section", "status", "basis", "length_mm"],
  rows: [
    ...scheme.posts.map(({ id, tag, section, baseZUm, topZUm }): Cell[] => [
      ...[id, tag, null, "post", section, ...added, mm(topZUm - baseZUm)],
    ]),
    ...scheme.beams.map(({ id, tag, section, from, to: end }): Cell[] => [
      ...[id, tag, null, "beam", section, ...added],
      to(mm(hypot(end.xUm - from.xUm, end.yUm - from.yUm, end.zUm - from.zUm)), 1),
    ]),
    ...scheme.openings.flatMap(({ id, tag, containerId, framing, widthUm, heightUm }): Cell[][] => {
      if (framing === undefined) return [];
      const bar = (family: string, section: string, lengthUm: number): Cell[] => [
        ...[`${id}/${family}`, tag, containerId, family, section, ...added, mm(lengthUm)],
      ];
      return [
        bar("jamb, first", framing.jamb, heightUm),
        bar("jamb, second", framing.jamb, heightUm),
        bar("header", framing.header, widthUm),
        ...(framing.sill === undefined ? [] : [bar("sill", framing.sill, widthUm)]),
      ];
    }),
  ],
});

/** Clear lengths of the opening for its framing. */
const added = ["NEW", "as drawn"];
