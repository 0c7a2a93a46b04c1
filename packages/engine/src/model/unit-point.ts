import type { EndName, SideName, UnitSeat } from "./unit-lines.ts";

/** A bearing point of a container: the foot or head of a corner post, or a seat on a rail. */
export type UnitPoint =
  | {
      readonly unitId: string;
      readonly corner: { readonly end: EndName; readonly side: SideName; readonly level: "foot" | "head" };
    }
  | { readonly unitId: string; readonly seat: UnitSeat };
