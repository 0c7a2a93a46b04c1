import { textWidthPx } from "./text-width.ts";

export type BoxPx = { left: number; top: number; right: number; bottom: number };
export type TextAnchor = "start" | "middle" | "end";
export type Spot = { xPx: number; yPx: number; anchor: TextAnchor; turned?: boolean };

/** Text that wants a place: the spots it may take, best first; `yPx` is the baseline. */
export type Label = { key: string; text: string; sizePx: number; spots: readonly Spot[] };

export type Placed<L extends Label> = L & { spot: Spot; box: BoxPx; clear: boolean };

/** Lettering over lettering cannot be read at all; over a line it can, with its halo. */
const labelOverLabel = 50;

/**
 * Each label in the order given takes the first of its spots that is clear of what is drawn and of the labels before
 * it. One that finds no clear spot takes the one that covers least and says so.
 */
export function placeLabels<L extends Label>(labels: readonly L[], obstacles: readonly BoxPx[]): Placed<L>[] {
  const taken: BoxPx[] = [];
  return labels.map((label) => {
    const best = bestSpot(label, (box) => labelOverLabel * covered(box, taken) + covered(box, obstacles));
    taken.push(best.box);
    return { ...label, spot: best.spot, box: best.box, clear: best.cover === 0 };
  });
}

type Tried = { spot: Spot; box: BoxPx; cover: number };

function bestSpot(label: Label, coverOf: (box: BoxPx) => number): Tried {
  let best: Tried | undefined;
  for (const spot of label.spots) {
    const box = labelBox(label.text, label.sizePx, spot);
    const cover = coverOf(box);
    if (best === undefined || cover < best.cover) best = { spot, box, cover };
    if (cover === 0) break;
  }
  if (best === undefined) throw new RangeError(`label ${label.key} was given no spot`);
  return best;
}

const covered = (box: BoxPx, others: readonly BoxPx[]): number =>
  others.reduce((sum, other) => sum + sharedArea(box, other), 0);

/** The box of a line of lettering, px, with a hair of air round it. */
export function labelBox(text: string, sizePx: number, { xPx, yPx, anchor, turned = false }: Spot): BoxPx {
  const width = textWidthPx(text, sizePx);
  const before = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  const rise = sizePx * 0.76;
  const fall = sizePx * 0.2;
  if (turned) return { left: xPx - rise, right: xPx + fall, top: yPx - (width - before), bottom: yPx + before };
  return { left: xPx - before, right: xPx - before + width, top: yPx - rise, bottom: yPx + fall };
}

export const boxAround = (xPx: number, yPx: number, halfWidthPx: number, halfHeightPx: number): BoxPx => ({
  left: xPx - halfWidthPx,
  right: xPx + halfWidthPx,
  top: yPx - halfHeightPx,
  bottom: yPx + halfHeightPx,
});

/** Area two boxes share, px²; 0 when they are apart or only touch. */
export function sharedArea(a: BoxPx, b: BoxPx): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}
