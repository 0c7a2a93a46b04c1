import type { PathStroke, ElevationFace, ElevationModel } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { hexagonHalfPx } from "../../look/hexagon-size.ts";
import type { DimensionStrings } from "../dimension/strings.ts";
import {
  boxAround,
  labelBox,
  placeLabels,
  sharedArea,
  type BoxPx,
  type Label,
  type Placed,
  type Spot,
} from "../label/place-labels.ts";
import { objectBoxes, objectLabels } from "../objects/object-labels.ts";
import { elevationEye } from "../objects/object-eye.ts";
import { forceLabels } from "./force-labels.ts";
import { peopleBoxes } from "./figure-place.ts";
import { keynotes } from "./keynotes.ts";
import { rectToPx } from "../paper-to-px.ts";
import { smallBelowPxPerM } from "./small-view.ts";
import type { RectPx } from "../px-path.ts";
import { breakAboveFootPx, strokeRun } from "../stroke/stroke-run.ts";
import type { ViewTransform } from "../view-transform.ts";

type Lettered = Label & {
  kind: "unit" | "force" | "dimension" | "object" | "keynote";
  colour: string;
  fontWeight: number;
  trackingEm: number;
};

/** Lettering of an elevation, placed so that no two pieces overlap. */
export type ElevationLabel = Placed<Lettered>;

export type TagSpot = { id: string; of: "opening" | "post"; tag: string; xPx: number; yPx: number };

/** An opening smaller than its hexagon shows none: it would hide the opening and its neighbour, px. */
const leastTagged = { widthPx: 2 * hexagonHalfPx.widthPx - 4, heightPx: 2 * hexagonHalfPx.heightPx } as const;

/** Sizes of lettering, px: the least that is read on a drawing is 11. */
const sizesPx = {
  usual: { unit: 15, unitBeyond: 12, force: 11.5 },
  small: { unit: 12, unitBeyond: 11, force: 11 },
} as const;

const sizesOn = ({ pxPerM }: ViewTransform) => (pxPerM < smallBelowPxPerM ? sizesPx.small : sizesPx.usual);
const leastTaggedSmall = { widthPx: 4 * hexagonHalfPx.widthPx, heightPx: 2 * hexagonHalfPx.heightPx } as const;

/** Where each opening's hexagon stands: its middle, unless a nearer face covers it or it is too small. */
export function tagSpots(model: ElevationModel, view: ViewTransform): TagSpot[] {
  const least = view.pxPerM < smallBelowPxPerM ? leastTaggedSmall : leastTagged;
  const spots = model.faces.flatMap((face, at) => {
    if (face.beyond) return [];
    const nearer = model.faces.slice(at + 1).map((each) => boxOf(rectToPx(view, each)));
    return face.openings.flatMap((place) => {
      const { xPx, yPx, widthPx, heightPx } = rectToPx(view, place);
      const spot = {
        id: place.opening.id,
        of: "opening" as const,
        tag: place.opening.tag,
        xPx: xPx + widthPx / 2,
        yPx: yPx + heightPx / 2,
      };
      const box = boxAround(spot.xPx, spot.yPx, hexagonHalfPx.widthPx, hexagonHalfPx.heightPx);
      return widthPx < least.widthPx || heightPx < least.heightPx || nearer.some((other) => sharedArea(box, other) > 0)
        ? []
        : [spot];
    });
  });
  const all: TagSpot[] = [...spots, ...postTags(model, view)];
  return all.filter((spot, at) => all.slice(0, at).every((other) => sharedArea(tagBox(spot), tagBox(other)) === 0));
}

/** A post bears its tag in its upper half, where it is tall enough for one and its figure. */
const postTags = (model: ElevationModel, view: ViewTransform): TagSpot[] =>
  model.posts
    .filter(({ behind }) => !behind)
    .flatMap((place) => {
      const { xPx, yPx, widthPx, heightPx } = rectToPx(view, place);
      if (heightPx < leastTaggedPostPx) return [];
      const { id, tag } = place.post;
      return [{ id, of: "post" as const, tag, xPx: xPx + widthPx / 2, yPx: yPx + heightPx * 0.36 }];
    });

const leastTaggedPostPx = 60;

const tagBox = ({ xPx, yPx }: TagSpot): BoxPx =>
  boxAround(xPx, yPx, hexagonHalfPx.widthPx + 1, hexagonHalfPx.heightPx + 1);

export type ElevationLettering = {
  strings: DimensionStrings;
  /** Where a layer inks, such as strands. */
  inked?: readonly BoxPx[] | undefined;
  /** The field runs from 0 to here: a keynote is not cut off at either end. */
  rightPx?: number | undefined;
};

/** Dimensions first, then forces, then the units' names, which have the most room. */
export function elevationLabels(
  model: ElevationModel,
  view: ViewTransform,
  strokes: readonly PathStroke[],
  units: UnitSystem,
  { strings, inked = [], rightPx }: ElevationLettering,
): ElevationLabel[] {
  const names = model.faces
    .map((face, at) => unitLabel(face, model.faces.slice(at + 1), view))
    .filter((label) => label !== null);
  const wanted = [
    ...strings.labels.map((label): Lettered => ({ ...label, kind: "dimension", trackingEm: 0.02 })),
    ...forceLabels(strokes, view, units, sizesOn(view).force).map((label): Lettered => ({
      ...label,
      kind: "force",
      trackingEm: 0.01,
    })),
    ...objectLabels(model.objects, elevationEye(model.side, view), units),
    ...keynotes(model, view, units).flatMap((note): Lettered[] => {
      const spots = note.spots.filter((spot) => {
        const { left, right } = labelBox(note.text, note.sizePx, spot);
        return rightPx === undefined || (left >= 0 && right <= rightPx);
      });
      return spots.length === 0 ? [] : [{ ...note, spots, kind: "keynote", trackingEm: 0.02 }];
    }),
    ...names,
  ];
  const tags = tagSpots(model, view).map(({ xPx, yPx }) =>
    boxAround(xPx, yPx, hexagonHalfPx.widthPx + 2, hexagonHalfPx.heightPx + 2),
  );
  const drawn = [
    ...strokes.map((stroke) => strokeBox(stroke, view)),
    ...strokes.filter(({ breaks }) => breaks).map((stroke) => breakBox(stroke, view)),
    ...model.faces
      .filter(({ beyond }) => !beyond)
      .flatMap(({ openings }) => openings.map((place) => boxOf(rectToPx(view, place)))),
    ...model.faces.flatMap((face) => railBoxes(face, view)),
    ...strings.lines.filter(({ upright }) => upright).map(lineBox),
    ...objectBoxes(model.objects, elevationEye(model.side, view), units),
    ...model.pads.map((place) => boxOf(rectToPx(view, place))),
    ...model.posts.map((place) => boxOf(rectToPx(view, place))),
    ...peopleBoxes(model, view),
    ...inked,
  ];
  // A keynote says again what the schedules say: it is lettered only where it lies on nothing.
  return placeLabels(wanted, drawn, tags).filter(({ kind, clear }) => kind !== "keynote" || clear);
}

/** The name of a unit on its face; none where nearer faces leave it no room. */
function unitLabel(face: ElevationFace, nearer: readonly ElevationFace[], view: ViewTransform): Lettered | null {
  const rect = rectToPx(view, face);
  const sizes = sizesOn(view);
  const sizePx = face.beyond ? sizes.unitBeyond : sizes.unit;
  const spots = nameSpots(rect, sizePx);
  const covers = nearer.map((each) => boxOf(rectToPx(view, each)));
  const free = spots.filter((spot) =>
    covers.every((cover) => sharedArea(cover, labelBox(face.container.tag, sizePx, spot)) === 0),
  );
  if (free.length === 0 || rect.heightPx < 24) return null;
  return {
    key: `unit-${face.container.id}-${face.face}`,
    of: face.container.id,
    text: face.container.tag,
    spots: free,
    kind: "unit",
    sizePx,
    colour: face.beyond ? ink.graphite : ink.ink,
    fontWeight: face.beyond ? 500 : 600,
    trackingEm: 0.05,
  };
}

/** Left to right along the upper part of a face, then along its middle and its foot; never beyond its edges. */
function nameSpots({ xPx, yPx, widthPx, heightPx }: RectPx, sizePx: number): Spot[] {
  const rows = [yPx + 11 + sizePx, yPx + heightPx * 0.42, yPx + heightPx / 2 + sizePx / 2, yPx + heightPx - 18];
  const insetPx = Math.min(1.6 * sizePx, widthPx / 2);
  const steps = Math.floor((widthPx - 2 * insetPx) / nameStepPx);
  return rows.flatMap((row) =>
    Array.from({ length: steps + 1 }, (_, step): Spot => ({
      xPx: xPx + insetPx + step * nameStepPx,
      yPx: row,
      anchor: "middle",
    })),
  );
}

const nameStepPx = 14;

function strokeBox(stroke: PathStroke, view: ViewTransform): BoxPx {
  const { from, to, widthFromPx, widthToPx } = strokeRun(stroke, view);
  const half = Math.max(widthFromPx, widthToPx) / 2 + 2;
  return { left: to.xPx - half, right: to.xPx + half, top: from.yPx, bottom: to.yPx };
}

/** The long break reaches farther than its stroke is wide. */
function breakBox(stroke: PathStroke, view: ViewTransform): BoxPx {
  const { to, widthToPx } = strokeRun(stroke, view);
  return boxAround(to.xPx, to.yPx - (stroke.stub ? 0 : breakAboveFootPx), widthToPx / 2 + 10, 8);
}

/** Lettering keeps off the line the heights are written on. */
const lineBox = ({ atPx, placesPx }: DimensionStrings["lines"][number]): BoxPx => ({
  left: atPx,
  right: atPx + 4,
  top: Math.min(...placesPx),
  bottom: Math.max(...placesPx),
});

/** Lettering keeps off the rails, which are the darkest lines of the view. */
function railBoxes(face: ElevationFace, view: ViewTransform): BoxPx[] {
  if (face.beyond) return [];
  const box = boxOf(rectToPx(view, face));
  return [
    { ...box, bottom: box.top + 3 },
    { ...box, top: box.bottom - 3 },
    { ...box, right: box.left + 3 },
    { ...box, left: box.right - 3 },
  ];
}

export const boxOf = ({ xPx, yPx, widthPx, heightPx }: RectPx): BoxPx => ({
  left: xPx,
  right: xPx + widthPx,
  top: yPx,
  bottom: yPx + heightPx,
});
