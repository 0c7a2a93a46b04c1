import { z } from "zod";
import { ElementId } from "./ids.ts";
import { FittingName } from "./part-names.ts";
import { LengthUm, PositiveLengthUm } from "./quantity.ts";
import { personText, Tag } from "./text.ts";

/** Made bearing of a unit on a unit or beam, away from a corner. Its height is that of what it lies on. */
export const Seat = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    /** The unit that comes down on it. */
    upperId: ElementId,
    /** The unit or beam it lies on. */
    lowerId: ElementId,
    /** Middle of the plate. */
    xUm: LengthUm,
    yUm: LengthUm,
    /** Along the member it lies on, and across it. */
    lengthUm: PositiveLengthUm,
    widthUm: PositiveLengthUm,
    /** Thickness of plate and packing between the two. */
    packingUm: PositiveLengthUm,
    /** True where the upper unit is welded or bolted down: it then resists uplift and sliding. */
    heldDown: z.boolean(),
    /** Thickness of a plate welded between the flanges of the bottom rail that comes down here, in its middle; absent: none. */
    stiffenerUm: PositiveLengthUm.min(4000).max(25_000).exactOptional(),
    /** Level as built against drawn; absent: the project's error either way. */
    levelErrorUm: LengthUm.min(-100_000).max(100_000).exactOptional(),
  })
  .refine(({ upperId, lowerId }) => upperId !== lowerId, { path: ["lowerId"], message: "a unit cannot bear on itself" })
  .meta({ id: "Seat" });
export type Seat = z.infer<typeof Seat>;

/** What a tie carries from unit to unit. `in plan` leaves each free to settle by itself. */
export const tieKinds = ["in plan", "in plan and upright"] as const;

/** Made connection between two units side by side, at one point of the gap between them. */
export const Tie = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    aId: ElementId,
    bId: ElementId,
    /** Middle of the gap. */
    xUm: LengthUm,
    yUm: LengthUm,
    zUm: LengthUm,
    carries: z.enum(tieKinds),
    /** In each direction it carries; absent: that of the stated plate. */
    stiffnessNPerMm: z.int().min(1).max(10_000_000).exactOptional(),
  })
  .refine(({ aId, bId }) => aId !== bId, { path: ["bId"], message: "a tie joins two units" })
  .meta({ id: "Tie" });
export type Tie = z.infer<typeof Tie>;

/**
 * `lock`: the stock locking device between matching fittings. `made connection`: plates or welds from a fitting to
 * whatever it stands on. `hold-down`: a fitting anchored to its pad.
 */
export const lockKinds = ["lock", "made connection", "hold-down"] as const;

/** What joins a bottom fitting to what it stands on. Without one it only bears. */
export const Lock = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    containerId: ElementId,
    fitting: FittingName,
    kind: z.enum(lockKinds),
    /** Tested resistances, N, with where they are written; absent: those the engine states. */
    tested: z
      .strictObject({
        tensionN: z.int().min(0).max(10_000_000),
        shearN: z.int().min(0).max(10_000_000),
        source: personText(200),
      })
      .exactOptional(),
  })
  .meta({ id: "Lock" });
export type Lock = z.infer<typeof Lock>;
