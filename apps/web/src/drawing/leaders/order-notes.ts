import type { ScreenPoint } from "../view-transform.ts";
import { segmentsCross } from "./segments-cross.ts";

type Anchored = { anchor: ScreenPoint | null };

/** Where the margin's numbers would stand: evenly spaced between two heights at the margin's edge, px. */
export type MarginSpan = { xPx: number; topPx: number; footPx: number };

/**
 * Notes in the order of their height on the drawing, exchanged where that would make two leaders cross. Each exchange
 * shortens the leaders together, so the exchanging ends. Notes without a place come last, in the order given.
 */
export function orderNotes<N extends Anchored>(notes: readonly N[], margin: MarginSpan): N[] {
  const placed = notes.flatMap((note) => (note.anchor === null ? [] : [{ note, anchor: note.anchor }]));
  const order = placed.toSorted((a, b) => a.anchor.yPx - b.anchor.yPx || b.anchor.xPx - a.anchor.xPx);
  const slots = order.map((_, index) => slotAt(index, order.length, margin));
  const exchangesAtMost = order.length ** 3;
  for (let count = 0; count < exchangesAtMost; count += 1) {
    const pair = crossingPair(order, slots);
    if (pair === null) break;
    const [i, j] = pair;
    const [first, second] = [order[i], order[j]];
    if (first === undefined || second === undefined) break;
    order[i] = second;
    order[j] = first;
  }
  return [...order.map(({ note }) => note), ...notes.filter(({ anchor }) => anchor === null)];
}

const slotAt = (index: number, count: number, { xPx, topPx, footPx }: MarginSpan): ScreenPoint => ({
  xPx,
  yPx: count === 1 ? topPx : topPx + ((footPx - topPx) * index) / (count - 1),
});

function crossingPair(
  order: readonly { anchor: ScreenPoint }[],
  slots: readonly ScreenPoint[],
): [number, number] | null {
  for (const [i, one] of order.entries())
    for (const [j, other] of order.entries()) {
      const [from, to] = [slots[i], slots[j]];
      if (j > i && from !== undefined && to !== undefined && segmentsCross(from, one.anchor, to, other.anchor))
        return [i, j];
    }
  return null;
}
