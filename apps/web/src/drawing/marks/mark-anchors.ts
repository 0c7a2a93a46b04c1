import type { Mark, PointMm, Scheme } from "@cornerway/schema";
import type { Side } from "../contract.ts";
import type { PaperRect } from "../elevation/corrugation.ts";
import { elevationModel, type ElevationModel } from "../elevation/elevation-model.ts";
import { isometricModel, isoToPx, type IsometricModel, type IsoPoint } from "../isometric/isometric-model.ts";
import { rectToPx } from "../paper-to-px.ts";
import { project, toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";
import { onFaceMm } from "../elevation/on-face.ts";

/** Where a mark's leader ends, px of the field: a dot on a face, an arrow on an edge. */
export type MarkAnchor = ScreenPoint & { end: "dot" | "arrow"; view: "elevation" | "isometric" };

type ViewsShown = { side: Side; elevation: ViewTransform; isometric: ViewTransform | null };

/** A place for each mark that one of the views shows: on the elevation where its face is seen, else on the isometric. */
export function markAnchors(marks: readonly Mark[], scheme: Scheme, views: ViewsShown): ReadonlyMap<string, MarkAnchor> {
  const elevation = elevationModel(scheme, views.side);
  const isometric = isometricModel(scheme);
  const anchors = new Map<string, MarkAnchor>();
  for (const mark of marks) {
    const anchor = onElevation(mark, elevation, views.elevation) ?? (views.isometric === null ? null : onIsometric(mark, isometric, views.isometric));
    if (anchor !== null) anchors.set(mark.id, anchor);
  }
  return anchors;
}

function onElevation(mark: Mark, model: ElevationModel, view: ViewTransform): MarkAnchor | null {
  const opening = model.faces.filter(({ beyond }) => !beyond).flatMap(({ openings }) => openings).find((place) => mark.elements.includes(place.opening.id));
  if (opening !== undefined) return { ...rightOf(opening, view), end: "dot", view: "elevation" };
  const post = model.posts.find((place) => place.post.id === mark.elements[0] && !place.behind);
  if (post !== undefined) return { ...rightOf(post, view), end: "dot", view: "elevation" };
  const pad = model.pads.find((place) => place.pad.id === mark.elements[0]);
  if (pad !== undefined) return { ...rightOf(pad, view), end: "arrow", view: "elevation" };
  return atPoint(mark, model, view) ?? onFace(mark, model, view);
}

/** A bearing on a face that is seen: the easternmost as drawn, so that the leader crosses least. */
function atPoint(mark: Mark, model: ElevationModel, view: ViewTransform): MarkAnchor | null {
  const places = mark.fact.kind === "borne-on-rail" ? mark.fact.crossings.map(({ at }) => at) : mark.fact.kind === "borne-on-fittings" ? [] : [mark.at];
  const seen = places.filter((at) => isOnFace(at, model)).map((at) => toScreen(view, project(model.side, at)));
  const right = seen.toSorted((a, b) => b.xPx - a.xPx)[0];
  return right === undefined ? null : { xPx: right.xPx + 8, yPx: right.yPx + 3, end: "dot", view: "elevation" };
}

function isOnFace(at: PointMm, model: ElevationModel): boolean {
  const { uMm, vMm, depthMm } = project(model.side, at);
  return model.faces.some(
    (face) =>
      !face.beyond &&
      Math.abs(face.depthMm - depthMm) < onFaceMm &&
      uMm > face.u0Mm - 60 &&
      uMm < face.u1Mm + 60 &&
      vMm > face.z0Mm - 60 &&
      vMm < face.z1Mm + 60,
  );
}

/** The unit's own face, in its sheet near the right-hand post. */
function onFace(mark: Mark, model: ElevationModel, view: ViewTransform): MarkAnchor | null {
  const at = model.faces.findLastIndex(({ container, beyond }) => container.id === mark.elements[0] && !beyond);
  const face = model.faces[at];
  if (face === undefined) return null;
  const nearer = model.faces.slice(at + 1);
  const spot = faceSpots(face).find(({ uMm, vMm }) => nearer.every((other) => !within(other, uMm, vMm)));
  return spot === undefined ? null : { ...toScreen(view, spot), end: "dot", view: "elevation" };
}

const faceSpots = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect) =>
  [0.985, 0.8, 0.5, 0.2, 0.015].map((share) => ({ uMm: u0Mm + (u1Mm - u0Mm) * share, vMm: z0Mm + (z1Mm - z0Mm) * 0.62 }));

const within = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect, uMm: number, vMm: number): boolean => uMm > u0Mm && uMm < u1Mm && vMm > z0Mm && vMm < z1Mm;

function rightOf(place: PaperRect, view: ViewTransform): ScreenPoint {
  const { xPx, yPx, widthPx, heightPx } = rectToPx(view, place);
  return { xPx: xPx + widthPx, yPx: yPx + heightPx * 0.3 };
}

/** The middle of the first face of the unit that nothing nearer covers. */
function onIsometric(mark: Mark, model: IsometricModel, view: ViewTransform): MarkAnchor | null {
  const at = model.units.findIndex(({ container, faces }) => mark.elements.some((id) => id === container.id || faces.some(({ openings }) => openings.some(({ opening }) => opening.id === id))));
  const unit = model.units[at];
  if (unit === undefined) return null;
  const nearer = model.units.slice(at + 1);
  const spots = unit.faces.flatMap(({ outline }) => spotsOn(outline));
  const spot = spots.find((point) => nearer.every(({ silhouette }) => !insideHull(silhouette, point)));
  return spot === undefined ? null : { ...isoToPx(view, model.middle, spot), end: "dot", view: "isometric" };
}

const spotsOn = ([a, b, c]: readonly IsoPoint[]): IsoPoint[] =>
  a === undefined || b === undefined || c === undefined
    ? []
    : [0.82, 0.5, 0.2].map((share) => ({
        rightMm: a.rightMm + (b.rightMm - a.rightMm) * share + (c.rightMm - b.rightMm) * 0.5,
        downMm: a.downMm + (b.downMm - a.downMm) * share + (c.downMm - b.downMm) * 0.5,
      }));

function insideHull(hull: readonly IsoPoint[], point: IsoPoint): boolean {
  const turns = hull.map((from, index) => {
    const to = hull[(index + 1) % hull.length] ?? from;
    return Math.sign((to.rightMm - from.rightMm) * (point.downMm - from.downMm) - (to.downMm - from.downMm) * (point.rightMm - from.rightMm));
  });
  return turns.every((turn) => turn >= 0) || turns.every((turn) => turn <= 0);
}
