import type { PlacedChange } from "@cornerway/engine";
import { boxOf } from "../elevation/elevation-labels.ts";
import { labelBox, placeLabels, type BoxPx, type Label, type Spot } from "../label/place-labels.ts";
import { rectToPx } from "../paper-to-px.ts";
import { inset, type RectPx } from "../px-path.ts";
import type { ScreenPoint, ViewTransform } from "../view-transform.ts";

/** A revision cloud on a view with its delta, px of the field. One cloud stands for all that changed at one place. */
export type CloudMark = {
  key: string;
  ids: readonly string[];
  /** Numbers of the lines it belongs to, least first. */
  numbers: readonly number[];
  cloud: RectPx;
  /** What the yellow pencil goes over; null where nothing stands any more. */
  wash: RectPx | null;
  /** What was taken away, hatched in pencil. */
  gone: RectPx | null;
  delta: ScreenPoint;
};

/** Air between what changed and its cloud, px. */
const airPx = 9;

/** Arcs bulge so far from the rectangle of their cloud, px. */
const bulgePx = 7;

/** The rim of a cloud, which lettering keeps off: what it goes round may be lettered. */
export function cloudRim({ cloud }: Pick<CloudMark, "cloud">): BoxPx[] {
  const { left, right, top, bottom } = boxOf(cloud);
  const outer = boxOf(inset(cloud, -bulgePx));
  return [
    { ...outer, bottom: top + 1 },
    { ...outer, top: bottom - 1 },
    { ...outer, right: left + 1 },
    { ...outer, left: right - 1 },
  ];
}

/** The clouds of one view. Deltas keep off each other and off what is lettered. */
export function cloudMarks(
  placed: readonly PlacedChange[],
  numberOf: ReadonlyMap<string, number>,
  view: ViewTransform,
  lettered: readonly BoxPx[],
): CloudMark[] {
  const clouds = [...byPlace(placed, view)].map(([key, changes]) => cloudOf(key, changes, numberOf, view));
  const deltas = placeLabels(clouds.map(deltaLabel), lettered);
  return clouds.map((mark, at) => ({
    ...mark,
    delta: deltas[at]?.spot ?? { xPx: mark.cloud.xPx, yPx: mark.cloud.yPx },
  }));
}

function byPlace(placed: readonly PlacedChange[], view: ViewTransform): Map<string, PlacedChange[]> {
  const places = new Map<string, PlacedChange[]>();
  for (const change of placed) {
    const key = keyOf(rectToPx(view, change.fresh), change.gone);
    places.set(key, [...(places.get(key) ?? []), change]);
  }
  return places;
}

const keyOf = ({ xPx, yPx, widthPx, heightPx }: RectPx, gone: boolean): string =>
  [...[xPx, yPx, widthPx, heightPx].map(Math.round), gone].join(" ");

function cloudOf(
  key: string,
  changes: readonly PlacedChange[],
  numberOf: ReadonlyMap<string, number>,
  view: ViewTransform,
): Omit<CloudMark, "delta"> {
  const [first] = changes;
  if (first === undefined) throw new RangeError("a cloud is drawn round one change at least");
  const rect = rectToPx(view, first.fresh);
  const numbers = changes.map(({ id }) => numberOf.get(id)).filter((number) => number !== undefined);
  return {
    key,
    ids: changes.map(({ id }) => id),
    numbers: [...new Set(numbers)].toSorted((a, b) => a - b),
    cloud: inset(rect, -airPx),
    wash: first.gone ? null : rect,
    gone: first.gone ? rect : null,
  };
}

/** A delta takes the room of two letters of this size; its middle stands this far above their foot, px. */
const deltaText = "C1";
const deltaSizePx = 24;
const deltaRisePx = 6.7;

/** The delta as a label, so that it takes a clear spot: round the cloud, then in wider and wider rings about it. */
function deltaLabel({ key, cloud }: Omit<CloudMark, "delta">): Label {
  const spots = ringsPx.flatMap((away) => spotsAbout(cloud, away));
  return { key, text: deltaText, sizePx: deltaSizePx, spots, must: true };
}

/** How far a delta's middle may stand from the edge of its cloud, px. */
const ringsPx = [12, 36, 62, 90] as const;
const shares = [0.12, 0.5, 0.88, 0.3, 0.7] as const;

function spotsAbout(cloud: RectPx, awayPx: number): Spot[] {
  const { left, right, top, bottom } = boxOf(cloud);
  const at = (xPx: number, yPx: number): Spot => ({ xPx, yPx: yPx + deltaRisePx, anchor: "middle" });
  const rows = shares.map((share) => top + (bottom - top) * share);
  const columns = shares.map((share) => right - (right - left) * share);
  return [
    ...rows.map((y) => at(right + awayPx, y)),
    ...columns.map((x) => at(x, top - awayPx)),
    ...rows.map((y) => at(left - awayPx, y)),
    ...columns.map((x) => at(x, bottom + awayPx)),
  ];
}

/** Px box of a delta with its number, and its middle. */
export const deltaBox = ({ xPx, yPx }: ScreenPoint): BoxPx =>
  labelBox(deltaText, deltaSizePx, { xPx, yPx, anchor: "middle" });
export const deltaMiddle = ({ xPx, yPx }: ScreenPoint): ScreenPoint => ({ xPx, yPx: yPx - deltaRisePx });
