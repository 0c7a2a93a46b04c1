import type { Lock, Seat, Tie } from "@cornerway/schema";
import { plateKg } from "./steel-mass.ts";
import { known, lineOf, steelLine, type TakenOff } from "./take-off-line.ts";
import { roundPlateM } from "./weld-length.ts";

/** Plates of a joint that is not drawn in detail. Common practice, no published source. */
const tiePlateMm = { long: 300, wide: 150, thick: 12 };
const jointPlateMm = { long: 150, wide: 100, thick: 12 };
const stiffenerMm = { long: 153, wide: 30 };
const anchorsOfHoldDown = 2;

/**
 * A packing plate welded along to what it lies on; held down, all round to what stands on it as well. A stiffener is as high as a
 * bottom rail and as wide as its narrower flange, welded to the web on both faces.
 */
export function seatTakeOff({ id, upperId, lengthUm, widthUm, packingUm, heldDown, stiffenerUm }: Seat): TakenOff {
  const line = lineOf(id, upperId, "site");
  const plate = { long: lengthUm / 1000, wide: widthUm / 1000, thick: packingUm / 1000 };
  const alongM = (2 * plate.long) / 1000;
  const stiffener = stiffenerUm === undefined ? undefined : { ...stiffenerMm, thick: stiffenerUm / 1000 };
  return known([
    steelLine(line, "plate", plateKg(plate) + (stiffener ? plateKg(stiffener) : 0)),
    line(
      "weld of 5 mm",
      alongM + (heldDown ? roundPlateM(plate) : 0) + (stiffener ? (2 * stiffener.long) / 1000 : 0),
      "m",
    ),
    line("engineering", 1, "each"),
  ]);
}

export function tieTakeOff({ id }: Tie): TakenOff {
  const line = lineOf(id, null, "site");
  return known([
    steelLine(line, "plate", plateKg(tiePlateMm)),
    line("weld of 5 mm", roundPlateM(tiePlateMm), "m"),
    line("engineering", 1, "each"),
  ]);
}

export function lockTakeOff({ id, containerId, kind }: Lock): TakenOff {
  const line = lineOf(id, containerId, "site");
  switch (kind) {
    case "lock":
      return known([line("lock", 1, "each")]);
    case "hold-down":
      return known([line("anchor", anchorsOfHoldDown, "each"), line("engineering", 1, "each")]);
    case "made connection":
      return known([
        steelLine(line, "plate", 2 * plateKg(jointPlateMm)),
        line("weld of 5 mm", 2 * roundPlateM(jointPlateMm), "m"),
        line("engineering", 1, "each"),
      ]);
  }
}
