import { z } from "zod";
import { ElementId } from "./ids.ts";
import { LengthUm, PositiveLengthUm, PressurePa } from "./quantity.ts";
import { personText, Tag } from "./text.ts";

/** What kind of action a load is; combinations treat it as such. */
export const loadCases = ["finish", "plant", "imposed", "snow", "wind"] as const;

const ForceN = z.int().min(-10_000_000).max(10_000_000);

const common = {
  id: ElementId,
  tag: Tag,
  containerId: ElementId,
  surface: z.enum(["floor", "roof"]),
  case: z.enum(loadCases),
  /** What it is: a tank, a stair, a parapet. */
  note: personText(200),
};

/** Coordinates along the unit's own axes, x from the front end, y from the right side, from the outer faces of the fittings. */
const SpotOnUnit = { xUm: LengthUm, yUm: LengthUm };

/** A load put where someone says, on the floor or roof of one unit. Down is positive. */
export const FreeLoad = z
  .discriminatedUnion("shape", [
    z.strictObject({
      ...common,
      shape: z.literal("point"),
      ...SpotOnUnit,
      downN: ForceN,
      /** Along the unit's own axes. */
      alongXN: ForceN,
      alongYN: ForceN,
    }),
    z.strictObject({
      ...common,
      shape: z.literal("line"),
      ...SpotOnUnit,
      toXUm: LengthUm,
      toYUm: LengthUm,
      downNPerM: z.int().min(-1_000_000).max(1_000_000),
    }),
    z.strictObject({
      ...common,
      shape: z.literal("area"),
      ...SpotOnUnit,
      lengthUm: PositiveLengthUm,
      widthUm: PositiveLengthUm,
      pressurePa: PressurePa,
    }),
  ])
  .meta({ id: "FreeLoad" });
export type FreeLoad = z.infer<typeof FreeLoad>;
