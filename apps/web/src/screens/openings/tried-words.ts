import type { Opening, UnitSystem } from "@cornerway/schema";
import type { BoxPx } from "../../drawing/label/place-labels.ts";
import type { ScreenPoint } from "../../drawing/view-transform.ts";
import { spokenLength } from "../../units/drawn-length.ts";
import type { ChartPlace } from "../../worker/chart-messages.ts";

/** What is said beside the place that is tried; of an opening that is drawn there, that it is so now. */
export function triedWords(
  { widthMm, centreMm }: ChartPlace,
  there: { readonly opening: Opening } | null,
  units: UnitSystem,
): string {
  const now = there === null ? "" : `${there.opening.tag} now: `;
  return `${now}${spokenLength(widthMm, units)} at ${spokenLength(centreMm, units)}`;
}

/** Where those words stand, over the place, px. */
export function triedBox(words: string, { xPx, yPx }: ScreenPoint): BoxPx {
  const halfPx = words.length * 3.3 + 10;
  return { left: xPx - halfPx, right: xPx + halfPx, top: yPx - 35, bottom: yPx - 14 };
}
