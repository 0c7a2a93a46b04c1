import { type PaperRect, type ElevationModel, onFaceMm } from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";
import { hexagonHalfPx } from "../../look/hexagon-size.ts";
import { tagSpots } from "../elevation/elevation-labels.ts";
import { rectToPx } from "../paper-to-px.ts";
import { project, toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";

/** What a leader points at: an element, and where on it (mm). */
export type LeaderTarget = { elementId: string; at: PointMm };

/**
 * The end of a leader in a view, px of the field: a dot on a face, an arrow on an edge. `upwards` near the foot of what
 * it is on: another end at the same place goes above it.
 */
export type ViewAnchor = ScreenPoint & { end: "dot" | "arrow"; upwards?: boolean };

/**
 * Where a leader ends on an elevation: the edge of an opening clear of its tag, the side of a post or pad, the very
 * place when a face at the front bears it, else the spot of the unit's own face
 * nearest to it that nothing nearer covers. Null when this side
 * does not show it.
 */
export function elevationAnchor(target: LeaderTarget, model: ElevationModel, view: ViewTransform): ViewAnchor | null {
  const front = model.faces.filter(({ beyond }) => !beyond);
  const opening = front.flatMap(({ openings }) => openings).find((place) => place.opening.id === target.elementId);
  if (opening !== undefined) return { ...rightOf(opening, view), end: "dot" };
  const post = model.posts.find((place) => place.post.id === target.elementId && !place.behind);
  if (post !== undefined) return { ...rightOf(post, view), end: "dot" };
  const pad = model.pads.find((place) => place.pad.id === target.elementId && !place.behind);
  if (pad !== undefined) return { ...rightOf(pad, view), end: "arrow" };
  if (!front.some(({ container }) => container.id === target.elementId)) return null;
  return onBearing(target, model, view) ?? onOwnFace(target, model, view);
}

/** A fitting stands this near to the end of its face, mm: what is said of it is said of the unit. */
const atOwnCornerMm = 260;

/** A bearing off the corners, at the edge of a face at the front: the dot stands just inside it. */
function onBearing({ elementId, at }: LeaderTarget, model: ElevationModel, view: ViewTransform): ViewAnchor | null {
  const { uMm, vMm, depthMm } = project(model.side, at);
  const atCorner = model.faces.some(
    ({ container, u0Mm, u1Mm }) =>
      container.id === elementId && Math.min(Math.abs(uMm - u0Mm), Math.abs(uMm - u1Mm)) < atOwnCornerMm,
  );
  if (atCorner) return null;
  const seen = model.faces.some(
    (face) => !face.beyond && Math.abs(face.depthMm - depthMm) < onFaceMm && within(face, uMm, vMm, 80),
  );
  if (!seen) return null;
  const { xPx, yPx } = toScreen(view, { uMm, vMm });
  return { xPx: xPx + 8, yPx: yPx + 3, end: "dot" };
}

/** An end of a unit is too narrow for one spot to be nearer than another, mm. */
const narrowMm = 3000;

/** A dot on a face stands this far inside its edges, mm. */
const insideMm = 150;

/**
 * The place spoken of on the unit's own face, though it lies farther back; else the spot nearest to it that nothing
 * nearer covers. On a narrow face, and for what is said of its corner, a spot by the posts.
 */
function onOwnFace({ elementId, at }: LeaderTarget, model: ElevationModel, view: ViewTransform): ViewAnchor | null {
  const index = model.faces.findLastIndex(({ container, beyond }) => container.id === elementId && !beyond);
  const face = model.faces[index];
  if (face === undefined) return null;
  const nearer = model.faces.slice(index + 1);
  const { uMm: along, vMm: up } = project(model.side, at);
  const spots = faceSpots(face);
  const wide = face.u1Mm - face.u0Mm > narrowMm;
  if (wide) spots.sort((a, b) => Math.abs(a.uMm - along) - Math.abs(b.uMm - along));
  if (wide && along > face.u0Mm + atOwnCornerMm && along < face.u1Mm - atOwnCornerMm)
    spots.unshift({ uMm: along, vMm: Math.min(Math.max(up, face.z0Mm + insideMm), face.z1Mm - insideMm) });
  const spot = spots.find(({ uMm, vMm }) => nearer.every((other) => !within(other, uMm, vMm, 0)));
  if (spot === undefined) return null;
  const clear = besideTag(toScreen(view, spot), model, view);
  return { ...clear, end: "dot", upwards: spot.vMm < (face.z0Mm + face.z1Mm) / 2 };
}

/** A dot keeps so far off the tag of an opening, px. */
const offTagPx = 6;

/** A place under a tag is pointed at from beside it, on the right: the dot would hide the tag. */
function besideTag(at: ScreenPoint, model: ElevationModel, view: ViewTransform): ScreenPoint {
  const reach = { x: hexagonHalfPx.widthPx + offTagPx, y: hexagonHalfPx.heightPx + offTagPx };
  const tag = tagSpots(model, view).find(
    ({ xPx, yPx }) => Math.abs(at.xPx - xPx) < reach.x && Math.abs(at.yPx - yPx) < reach.y,
  );
  return tag === undefined ? at : { ...at, xPx: tag.xPx + reach.x };
}

/** Spots on a face from its right-hand post to its left one. */
const faceSpots = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect) =>
  [0.985, 0.8, 0.5, 0.2, 0.015].map((share) => ({
    uMm: u0Mm + (u1Mm - u0Mm) * share,
    vMm: z0Mm + (z1Mm - z0Mm) * 0.62,
  }));

const within = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect, uMm: number, vMm: number, byMm: number): boolean =>
  uMm > u0Mm - byMm && uMm < u1Mm + byMm && vMm > z0Mm - byMm && vMm < z1Mm + byMm;

function rightOf(place: PaperRect, view: ViewTransform): ScreenPoint {
  const { xPx, yPx, widthPx, heightPx } = rectToPx(view, place);
  return { xPx: xPx + widthPx, yPx: yPx + heightPx * 0.3 };
}
