import type { Opening, UnitSystem } from "@cornerway/schema";
import { sharedArea, type BoxPx } from "../../drawing/label/place-labels.ts";
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

/** Half as high as the words with their frame, px. */
const HALF_HIGH_PX = 10.5;
/** From the place to the middle of words over or under it, and to the near end of words beside it, px. */
const OVER_PX = 24.5;
const BESIDE_PX = 16;

/** Where those words stand, px: over the place, else under it or beside it where they would lie over what is `kept` clear. */
export function triedBox(words: string, { xPx, yPx }: ScreenPoint, kept: readonly BoxPx[]): BoxPx {
  const halfPx = words.length * 3.3 + 10;
  const boxAt = (x: number, y: number): BoxPx => ({
    ...{ left: x - halfPx, right: x + halfPx },
    ...{ top: y - HALF_HIGH_PX, bottom: y + HALF_HIGH_PX },
  });
  const over = boxAt(xPx, yPx - OVER_PX);
  const aside = halfPx + BESIDE_PX;
  const boxes = [
    over,
    boxAt(xPx, yPx + OVER_PX),
    ...[1, -1].flatMap((sign) => [yPx - OVER_PX, yPx, yPx + OVER_PX].map((y) => boxAt(xPx + sign * aside, y))),
  ];
  return boxes.find((box) => box.left >= 0 && kept.every((other) => sharedArea(box, other) === 0)) ?? over;
}
