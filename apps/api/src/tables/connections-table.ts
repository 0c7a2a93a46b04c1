import type { Cell } from "../description/csv.ts";
import { mm, type Table, type TableSource } from "./table.ts";

/** What joins units to one another and to the ground: bearings with what they need, seats, ties and locks as drawn. */
export const connectionsTable = ({ scheme, assessment }: Pick<TableSource, "scheme" | "assessment">): Table => ({
  head: [
    ...["id", "joins", "to", "kind", "offset_x_mm", "offset_y_mm", "gap_mm", "length_mm", "width_mm", "packing_mm"],
    ...["stiffener_mm", "held_by", "Fz_kN"],
  ],
  rows: [
    ...assessment.bearings.map((bearing): Cell[] => [
      ...[bearing.id, bearing.unitId, bearing.onElementId ?? bearing.on, `bearing on ${bearing.on}: ${bearing.joint}`],
      ...[bearing.offsetXMm, bearing.offsetYMm, bearing.gapMm, null, null, null],
      ...[null, bearing.heldById ?? bearing.seatId ?? null, bearing.forceKn],
    ]),
    ...scheme.seats.map((seat): Cell[] => [
      ...[
        seat.id,
        seat.upperId,
        seat.lowerId,
        seat.heldDown ? "seat, held down" : "seat, bears only",
        null,
        null,
        null,
      ],
      ...[mm(seat.lengthUm), mm(seat.widthUm), mm(seat.packingUm)],
      ...[seat.stiffenerUm === undefined ? null : mm(seat.stiffenerUm), null, null],
    ]),
    ...scheme.ties.map((tie): Cell[] => [
      ...[tie.id, tie.aId, tie.bId, `tie: ${tie.carries}`, null, null, null, null, null, null, null, null, null],
    ]),
    ...scheme.locks.map((lock): Cell[] => [
      ...[lock.id, lock.containerId, lock.fitting, lock.kind, null, null, null, null, null, null, null, null, null],
    ]),
  ],
});
