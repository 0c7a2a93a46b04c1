import { faceFrame, placeContainer, pointOnFace, solidCorners } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";
import { project, type Projection, type ViewPoint } from "../drawing/view-transform.ts";

/** The things that lie whole within a rectangle of a view: units, posts, pads, beams, and cuts of units that do not. */
export function withinBand(scheme: Scheme, projection: Projection, from: ViewPoint, to: ViewPoint): string[] {
  const [left, right] = [Math.min(from.uMm, to.uMm), Math.max(from.uMm, to.uMm)];
  const [foot, head] = [Math.min(from.vMm, to.vMm), Math.max(from.vMm, to.vMm)];
  const holds = (at: PointMm): boolean => {
    const { uMm, vMm } = project(projection, at);
    return uMm >= left && uMm <= right && vMm >= foot && vMm <= head;
  };
  const units = scheme.containers.filter((unit) => solidCorners(placeContainer(unit)).every(holds));
  const inUnits = new Set(units.map(({ id }) => id));
  const openings = scheme.openings.filter((opening) => {
    const unit = scheme.containers.find(({ id }) => id === opening.containerId);
    if (unit === undefined || inUnits.has(unit.id)) return false;
    const frame = faceFrame(placeContainer(unit), opening.face);
    const [u0, v0] = [opening.offsetUm / 1000, opening.sillUm / 1000];
    const far = pointOnFace(frame, u0 + opening.widthUm / 1000, v0 + opening.heightUm / 1000);
    return holds(pointOnFace(frame, u0, v0)) && holds(far);
  });
  const posts = scheme.posts.filter(
    ({ xUm, yUm, baseZUm, topZUm }) => holds(mm(xUm, yUm, baseZUm)) && holds(mm(xUm, yUm, topZUm)),
  );
  const pads = scheme.pads.filter(({ xUm, yUm, topZUm }) => holds(mm(xUm, yUm, topZUm)));
  const beams = scheme.beams.filter((beam) =>
    [beam.from, beam.to].every(({ xUm, yUm, zUm }) => holds(mm(xUm, yUm, zUm))),
  );
  return [units, openings, posts, pads, beams].flat().map(({ id }) => id);
}

const mm = (xUm: number, yUm: number, zUm: number): PointMm => ({ xMm: xUm / 1000, yMm: yUm / 1000, zMm: zUm / 1000 });
