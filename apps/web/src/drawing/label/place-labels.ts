import type { ScreenPoint } from "../view-transform.ts";
import { textWidthPx } from "./text-width.ts";

export type BoxPx = { left: number; top: number; right: number; bottom: number };
export type TextAnchor = "start" | "middle" | "end";
export type Spot = {
  xPx: number;
  yPx: number;
  anchor: TextAnchor;
  turned?: boolean;
  /** Where a level leader from it ends: it does not stand beside what it is of. */
  lead?: ScreenPoint;
};

/** Text that wants a place: the spots it may take, best first; `yPx` is the baseline. */
export type Label = {
  key: string;
  text: string;
  sizePx: number;
  spots: readonly Spot[];
  /** The element it names, by id: where that is lifted off the paper its name goes along. */
  of?: string;
  /** True for what is never left out, were it to lie over other lettering. */
  must?: boolean;
};

export type Placed<L extends Label> = L & { spot: Spot; box: BoxPx; clear: boolean };

/**
 * Each label in the order given takes the first of its spots that is clear of what is drawn and of the labels before
 * it; where none is, the one over the fewest lines, which its halo lets it be read on, and says so. Lettering over
 * lettering or over one of `kept` cannot be read at all: a label that has no other spot is left out until one looks
 * closer, unless it must be shown.
 */
export function placeLabels<L extends Label>(
  labels: readonly L[],
  obstacles: readonly BoxPx[],
  kept: readonly BoxPx[] = [],
): Placed<L>[] {
  const taken = [...kept];
  return labels.flatMap((label) => {
    const free = (box: BoxPx) => taken.every((other) => sharedArea(box, other) === 0);
    const best =
      bestSpot(label, free, (box) => covered(box, obstacles)) ??
      (label.must === true
        ? bestSpot(
            label,
            () => true,
            (box) => covered(box, taken),
          )
        : null);
    if (best === null) return [];
    taken.push(best.box, ...leadBoxes(best));
    return [{ ...label, spot: best.spot, box: best.box, clear: best.cover === 0 }];
  });
}

type Tried = { spot: Spot; box: BoxPx; cover: number };

function bestSpot(label: Label, isFree: (box: BoxPx) => boolean, coverOf: (box: BoxPx) => number): Tried | null {
  if (label.spots.length === 0) throw new RangeError(`label ${label.key} was given no spot`);
  let best: Tried | null = null;
  for (const spot of label.spots) {
    const box = labelBox(label.text, label.sizePx, spot);
    if (!isFree(box) || !leadBoxes({ spot, box }).every(isFree)) continue;
    const cover = coverOf(box);
    if (best === null || cover < best.cover) best = { spot, box, cover };
    if (cover === 0) break;
  }
  return best;
}

/** The room a leader takes from its lettering to where it ends: nothing is lettered over it. */
function leadBoxes({ spot: { lead }, box }: { spot: Spot; box: BoxPx }): BoxPx[] {
  if (lead === undefined) return [];
  const [left, right] = lead.xPx < box.left ? [lead.xPx, box.left] : [box.right, lead.xPx];
  return [{ left, right, top: lead.yPx - 1, bottom: lead.yPx + 1 }];
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
