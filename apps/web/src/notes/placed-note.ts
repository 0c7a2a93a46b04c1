import type { PointMm } from "@cornerway/schema";
import type { Field } from "../paper/use-field.ts";
import type { SheetNote } from "../sheet/contract.ts";
import { orderNotes } from "../drawing/leaders/order-notes.ts";
import { separateEnds, type HeightPx } from "../drawing/leaders/separate-ends.ts";
import { ink } from "../look/ink.ts";
import { anchorFinder, type ViewsOnField } from "./mark-anchor.ts";

/** A note before it has its number: `at` is the place it speaks of, `id` stays with it. */
export type UnplacedNote = Omit<SheetNote, "number" | "anchor"> & { id: string; elementId: string; at: PointMm | null };

export type PlacedNote = SheetNote & { id: string; elementId: string };

/** The same notes in the same order, their leaders where the views now show their places. */
export function seenNotes(
  placed: readonly PlacedNote[],
  notes: readonly UnplacedNote[],
  view: ViewsOnField,
): PlacedNote[] {
  const anchorOf = anchorFinder(view);
  const places = new Map(notes.map(({ id, at }) => [id, at]));
  const ends = separateEnds(
    placed.map(({ id, elementId }) => {
      const at = places.get(id) ?? null;
      return at === null ? null : anchorOf({ elementId, at });
    }),
    heightOf(view),
  );
  return placed.map((note, index) => ({ ...note, anchor: ends[index] ?? null }));
}

/** Notes in an order in which leaders do not cross; those without a place come last. */
export function placeNotes(notes: readonly UnplacedNote[], view: ViewsOnField | null): PlacedNote[] {
  const anchorOf = view === null ? null : anchorFinder(view);
  const ends = separateEnds(
    notes.map(({ at, elementId }) => (anchorOf === null || at === null ? null : anchorOf({ elementId, at }))),
    view === null ? undefined : heightOf(view),
  );
  const anchored = notes.map(({ at: _at, ...note }, index) => ({ ...note, anchor: ends[index] ?? null }));
  const margin = view === null ? noMargin : marginOf(view.field);
  return orderNotes(anchored, margin).map((note, index) => ({ ...note, number: index + 1 }));
}

/** The number a mark bears in the margin, by mark id. */
export const noteNumbers = (notes: readonly PlacedNote[]): ReadonlyMap<string, number> =>
  new Map(notes.flatMap(({ markIds, number }) => markIds.map((id) => [id, number] as const)));

/** Ends of the leaders: of all notes that have a place. */
export const leaderAnchors = (notes: readonly PlacedNote[]) =>
  notes.flatMap(({ anchor, number, verdict }) =>
    anchor === null ? [] : [{ ...anchor, number, colour: verdict === "does not work" ? ink.rust : ink.ink }],
  );

/** Room the circles of the grid take above the elevation, px. */
const gridRoomPx = 44;

/** The field but for its lowest titles; where one small view has to bear every number, from below its grid's circles to the ground. */
function heightOf({ views, field, scheme }: ViewsOnField): HeightPx {
  if (!views.oneView) return { topPx: field.topPx + edgePx.top, footPx: field.topPx + field.heightPx - edgePx.titles };
  const { rect, transform } = views.elevation;
  const groundPx = transform.originYPx - (scheme.site.groundZUm / 1_000_000) * transform.pxPerM;
  return { topPx: field.topPx + rect.topPx + gridRoomPx, footPx: field.topPx + groundPx };
}

/** Numbers keep this far from the border above and, over the titles, from that below, px. */
const edgePx = { top: 12, titles: 48 } as const;

const noMargin = { xPx: 0, topPx: 0, footPx: 0 };

/** Where the numbers stand: from below the margin's heading to above its foot. */
const marginOf = ({ leftPx, topPx, widthPx, heightPx }: Field) => ({
  xPx: leftPx + widthPx,
  topPx: topPx + 90,
  footPx: topPx + heightPx * 0.66,
});
