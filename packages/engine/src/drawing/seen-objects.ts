import type { PointMm, Scheme } from "@cornerway/schema";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import type { Side } from "./side.ts";
import { project } from "./projection.ts";
import { isSeen } from "./line-of-sight.ts";
import { isometricEye, type PictureEye } from "./picture-eye.ts";
import { placedObjects, type PlacedObject } from "./placed-object.ts";

/** A thing to draw and whether something stands before it. */
export type SeenObject = { object: PlacedObject; hidden: boolean };

/** Towards the eye of each side. */
export const eyeOf: Readonly<Record<Side, PointMm>> = {
  south: { xMm: 0, yMm: -1, zMm: 0 },
  north: { xMm: 0, yMm: 1, zMm: 0 },
  east: { xMm: 1, yMm: 0, zMm: 0 },
  west: { xMm: -1, yMm: 0, zMm: 0 },
};

/** What an elevation shows, farthest first: a beam or a floor's load behind a wall dashed, other things behind one not at all. */
export function seenOnElevation(scheme: Scheme, side: Side): SeenObject[] {
  const depth = ({ at }: PlacedObject) => project(side, at).depthMm;
  return seenFrom(scheme, eyeOf[side]).toSorted((a, b) => depth(b.object) - depth(a.object));
}

/** What a picture shows besides its solids: ties, locks and loads that nothing stands before. */
export const seenOnIsometric = (scheme: Scheme, eye: PictureEye = isometricEye): SeenObject[] =>
  seenFrom(scheme, eye.towards).filter(({ object, hidden }) => !hidden && !isSolid(object.kind));

const isSolid = (kind: PlacedObject["kind"]): boolean => kind === "beam" || kind === "seat";

function seenFrom(scheme: Scheme, towards: PointMm): SeenObject[] {
  const units = scheme.containers.map(placeContainer);
  return placedObjects(scheme)
    .map((object) => ({
      object,
      hidden: !spotsOf(object).some((spot) => isSeen(othersOf(units, object), spot, towards)),
    }))
    .filter(({ object, hidden }) => !hidden || object.kind === "beam" || object.kind === "load");
}

/** A beam is seen where its middle or an end is. */
const spotsOf = (object: PlacedObject): PointMm[] =>
  object.kind === "beam" ? [object.at, ...object.ends] : [object.at];

/** A load on a roof is not hidden by the unit it lies on. */
const othersOf = (units: readonly PlacedContainer[], object: PlacedObject) =>
  object.kind === "load" && object.load.surface === "roof" ? units.filter(({ id }) => id !== object.unitId) : units;

/** What the plan of a storey shows: its own joints and loads, beams under it, and beams over the cut dash-dotted. */
export function seenOnPlan(scheme: Scheme, unitIds: ReadonlySet<string>, levelMm: number, cutMm: number): SeenObject[] {
  return placedObjects(scheme).flatMap((object): SeenObject[] => {
    switch (object.kind) {
      case "beam":
        return object.at.zMm > levelMm - underMm && object.at.zMm < levelMm + storeyMm
          ? [{ object, hidden: object.at.zMm < cutMm }]
          : [];
      case "tie":
        return unitIds.has(object.tie.aId) ? [{ object, hidden: false }] : [];
      default:
        return unitIds.has(object.unitId) ? [{ object, hidden: object.kind === "seat" }] : [];
    }
  });
}

/** Beams this far under a storey carry it; those this far over it are overhead, mm. */
const underMm = 700;
const storeyMm = 2800;
