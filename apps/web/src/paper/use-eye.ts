import { storeysOf } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useState } from "react";
import type { Side } from "../drawing/contract.ts";

const round: readonly Side[] = ["south", "east", "north", "west"];

/** Where one looks from: the side of the elevation, the storey the plan is cut at, a unit laid open. */
export function useEye(scheme: Scheme) {
  const [side, turnTo] = useState<Side>("south");
  const [unfoldedWanted, unfold] = useState<string | null>(null);
  const unfoldedId = scheme.containers.some(({ id }) => id === unfoldedWanted) ? unfoldedWanted : null;
  const [wanted, cutAt] = useState(0);
  const top = Math.max(0, storeysOf(scheme).length - 1);
  const storey = Math.min(wanted, top);
  return {
    side,
    storey,
    turnTo,
    /** Round the building: south, east, north, west. */
    turn: (by: 1 | -1) => turnTo(round.at((round.indexOf(side) + by) % round.length) ?? side),
    unfoldedId,
    /** One unit laid open on the whole field, or null for the building. */
    unfold,
    cutAt,
    up: () => cutAt(Math.min(top, storey + 1)),
    down: () => cutAt(Math.max(0, storey - 1)),
  };
}

export type Eye = ReturnType<typeof useEye>;
