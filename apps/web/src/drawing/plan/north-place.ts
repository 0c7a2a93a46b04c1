import { placeContainer, solidCorners } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import type { BoxPx } from "../label/place-labels.ts";
import { project, toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";
import { seenOnPlan } from "./seen-on-plan.ts";

/** The bounds of what a plan shows, px of the field; null where nothing is drawn. */
export function planOutline(scheme: Scheme, storey: number, view: ViewTransform): BoxPx | null {
  const corners = seenOnPlan(scheme, storey)
    .containers.flatMap((container) => solidCorners(placeContainer(container)))
    .map((corner) => toScreen(view, project("plan", corner)));
  if (corners.length === 0) return null;
  return {
    left: Math.min(...corners.map(({ xPx }) => xPx)),
    right: Math.max(...corners.map(({ xPx }) => xPx)),
    top: Math.min(...corners.map(({ yPx }) => yPx)),
    bottom: Math.max(...corners.map(({ yPx }) => yPx)),
  };
}

/** Where the north arrow stands beside a plan, px: the middle of its circle. */
export const northPlace = ({ right, top }: BoxPx): ScreenPoint => ({ xPx: right + 52, yPx: top + 8 });

/** Half the room the north arrow takes with its letter, px. */
export const northHalfPx = { widthPx: 14, heightPx: 26 } as const;
