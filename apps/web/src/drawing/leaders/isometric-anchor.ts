import { type IsometricModel, type IsoUnit, type IsoPoint } from "@cornerway/engine";
import { isoToPx } from "../isometric/iso-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { ViewAnchor } from "./elevation-anchor.ts";

/** Where a leader ends on the isometric: on the first spot of the unit, or of the unit it is cut in, that nothing nearer covers. */
export function isometricAnchor(elementId: string, model: IsometricModel, view: ViewTransform): ViewAnchor | null {
  const at = model.units.findIndex((unit) => unit.container.id === elementId || isCutIn(unit, elementId));
  const unit = model.units[at];
  if (unit === undefined) return null;
  const nearer = model.units.slice(at + 1);
  const own = unit.faces.flatMap(({ openings }) => openings).find(({ opening }) => opening.id === elementId);
  const spots = own === undefined ? unit.faces.flatMap(({ outline }) => spotsOn(outline)) : spotsOn(own.outline);
  const spot = spots.find((point) => nearer.every(({ silhouette }) => !isInside(silhouette, point)));
  return spot === undefined ? null : { ...isoToPx(view, model.middle, spot), end: "dot" };
}

const isCutIn = ({ faces }: IsoUnit, id: string): boolean =>
  faces.some(({ openings }) => openings.some(({ opening }) => opening.id === id));

const spotsOn = ([a, b, c]: readonly IsoPoint[]): IsoPoint[] =>
  a === undefined || b === undefined || c === undefined
    ? []
    : [0.82, 0.5, 0.2].map((share) => ({
        rightMm: a.rightMm + (b.rightMm - a.rightMm) * share + (c.rightMm - b.rightMm) * 0.5,
        downMm: a.downMm + (b.downMm - a.downMm) * share + (c.downMm - b.downMm) * 0.5,
      }));

function isInside(hull: readonly IsoPoint[], point: IsoPoint): boolean {
  const turns = hull.map((from, index) => {
    const to = hull[(index + 1) % hull.length] ?? from;
    return Math.sign(
      (to.rightMm - from.rightMm) * (point.downMm - from.downMm) -
        (to.downMm - from.downMm) * (point.rightMm - from.rightMm),
    );
  });
  return turns.every((turn) => turn >= 0) || turns.every((turn) => turn <= 0);
}
