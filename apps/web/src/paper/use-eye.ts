import { storeysOf } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useState } from "react";
import type { Side } from "../drawing/contract.ts";

/** Where one looks from: the side of the elevation and the storey the plan is cut at. */
export function useEye(scheme: Scheme) {
  const [side, turnTo] = useState<Side>("south");
  const [wanted, cutAt] = useState(0);
  const top = Math.max(0, storeysOf(scheme).length - 1);
  const storey = Math.min(wanted, top);
  return {
    side,
    storey,
    turnTo,
    cutAt,
    up: () => cutAt(Math.min(top, storey + 1)),
    down: () => cutAt(Math.max(0, storey - 1)),
  };
}

export type Eye = ReturnType<typeof useEye>;
