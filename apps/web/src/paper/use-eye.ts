import { isometricPlace, storeysOf, type EyePlace, type SectionLine } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useState } from "react";
import type { Side } from "../drawing/contract.ts";
import { sides } from "../drawing/sides.ts";
import { orbited, orbitedByPx } from "./orbit.ts";

/** Where one looks from: the side of the elevation, the storey the plan is cut at, a unit laid open. */
export function useEye(scheme: Scheme) {
  const [side, turnTo] = useState<Side>("south");
  const [unfoldedWanted, unfold] = useState<string | null>(null);
  const unfoldedId = scheme.containers.some(({ id }) => id === unfoldedWanted) ? unfoldedWanted : null;
  const [picture, lookFrom] = useState<EyePlace>(isometricPlace);
  const [section, cutAlong] = useState<SectionLine | null>(null);
  const [detailed, showDetails] = useState(false);
  const [wanted, cutAt] = useState(0);
  const top = Math.max(0, storeysOf(scheme).length - 1);
  const storey = Math.min(wanted, top);
  return {
    side,
    storey,
    turnTo,
    /** Round the building: south, east, north, west. */
    turn: (by: 1 | -1) => turnTo(sides.at((sides.indexOf(side) + by) % sides.length) ?? side),
    unfoldedId,
    /** One unit laid open on the whole field, or null for the building. */
    unfold,
    cutAt,
    /** The line a section is cut along, or null where the whole is pictured in its place. */
    section,
    cutAlong,
    /** True where the details of what is chosen stand in that place, if it has any. */
    detailed,
    showDetails,
    /** Where the picture of the whole is seen from. */
    picture,
    /** Round the building and up or down, by the hand. */
    dragPicture: (rightPx: number, downPx: number) => lookFrom((from) => orbitedByPx(from, rightPx, downPx)),
    /** The same in steps of 15° round and 10° up. */
    stepPicture: (round: -1 | 0 | 1, rise: -1 | 0 | 1) =>
      lookFrom((from) => orbited(from, round * 15_000, rise * 10_000)),
    pictureAsIsometric: () => lookFrom(isometricPlace),
    up: () => cutAt(Math.min(top, storey + 1)),
    down: () => cutAt(Math.max(0, storey - 1)),
  };
}

export type Eye = ReturnType<typeof useEye>;
