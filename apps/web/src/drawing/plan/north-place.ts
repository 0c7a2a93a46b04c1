import type { Scheme } from "@cornerway/schema";
import type { BoxPx } from "../label/place-labels.ts";
import { toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";
import { planWindow } from "./plan-window.ts";

/** The bounds of what a plan shows, px of the field; null where nothing is drawn. */
export function planOutline(scheme: Scheme, storey: number, view: ViewTransform): BoxPx | null {
  const window = planWindow(scheme, storey);
  if (window === null) return null;
  const low = toScreen(view, { uMm: window.uLow, vMm: window.vLow });
  const high = toScreen(view, { uMm: window.uHigh, vMm: window.vHigh });
  return { left: low.xPx, right: high.xPx, top: high.yPx, bottom: low.yPx };
}

/** Where the north arrow stands beside a plan, px: the middle of its circle. */
export const northPlace = ({ right, top }: BoxPx): ScreenPoint => ({ xPx: right + 52, yPx: top + 8 });

/** Half the room the north arrow takes with its letter, px. */
export const northHalfPx = { widthPx: 14, heightPx: 26 } as const;
