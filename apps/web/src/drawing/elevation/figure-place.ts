import type { ElevationModel } from "@cornerway/engine";
import type { BoxPx } from "../label/place-labels.ts";
import { xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import { smallBelowPxPerM } from "./small-view.ts";

type FigurePlace = { peopleMm: number; treeMm: number | null };

/** Ground free beside or under the building that is wide enough for two people, mm. */
const freeMm = 1900;

/**
 * People where an overhang or the ground leaves room, a tree on the other side; never over a member, never more than
 * three, and clear of the heights at the right. None on a small view, where the figures of forces need the room.
 */
export function figurePlace(model: ElevationModel, { pxPerM }: ViewTransform): FigurePlace | null {
  if (model.extent === null || pxPerM < smallBelowPxPerM) return null;
  const { u0Mm, u1Mm } = model.extent;
  const low = model.faces.filter(({ z0Mm }) => z0Mm < model.groundMm + 2500);
  const right = Math.max(...low.map((face) => face.u1Mm), u0Mm);
  const left = Math.min(...low.map((face) => face.u0Mm), u1Mm);
  if (low.length === 0) return { peopleMm: (u0Mm + u1Mm) / 2, treeMm: null };
  if (u1Mm - right > freeMm) return { peopleMm: right + (u1Mm - right) * 0.6, treeMm: left - 620 };
  if (left - u0Mm > freeMm) return { peopleMm: left - (left - u0Mm) * 0.6, treeMm: null };
  return { peopleMm: left - 650, treeMm: null };
}

/** How far people stand from the middle between them and how far a figure reaches aside, and the height of the taller, mm. */
const peopleMm = { apart: 270, aside: 220, tall: 1750 } as const;

/** The room the people take on an elevation, px: nothing is lettered over them where it can be elsewhere. */
export function peopleBoxes(model: ElevationModel, view: ViewTransform): BoxPx[] {
  const place = figurePlace(model, view);
  if (place === null) return [];
  const half = peopleMm.apart + peopleMm.aside;
  return [
    {
      left: xToPx(view, place.peopleMm - half),
      right: xToPx(view, place.peopleMm + half),
      top: yToPx(view, model.groundMm + peopleMm.tall),
      bottom: yToPx(view, model.groundMm),
    },
  ];
}
