import type { Scheme } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import type { PlacedContainer } from "../geometry/place.ts";
import type { PaperRect } from "./corrugation.ts";
import type { ElevationFace } from "./elevation-faces.ts";
import { elevationModel } from "./elevation-model.ts";
import { padOutline } from "./pad-outline.ts";
import { sectionWidthMm } from "./elevation-posts.ts";
import type { PlacedObject } from "./placed-object.ts";
import { onWall, planModel, type PlanModel } from "./plan-model.ts";
import { project, type Projection, type ViewPoint } from "./projection.ts";
import type { Side } from "./side.ts";

/** The rectangle each element a view shows takes on its paper, mm, by element id. */
type Parts = Map<string, PaperRect>;

/** What an elevation shows, and where; a thing that a nearer face covers whole is not shown. */
export function partsOnElevation(scheme: Scheme, side: Side): Parts {
  const { faces, posts, pads, objects } = elevationModel(scheme, side);
  const parts: Parts = new Map();
  for (const [at, face] of faces.entries()) {
    join(parts, face.container.id, face);
    const nearer = faces.slice(at + 1).filter(({ nearestMm }) => nearestMm < face.nearestMm);
    for (const place of face.openings)
      if (!nearer.some((other) => covers(other, place))) parts.set(place.opening.id, rectOf(place));
  }
  for (const place of posts) parts.set(place.post.id, rectOf(place));
  for (const place of pads) parts.set(place.pad.id, rectOf(place));
  for (const { object } of objects) parts.set(object.id, boundsOf(pointsOf(object, side)));
  return withHosted(scheme, parts);
}

/** What the plan of one storey shows, and where; `z` runs up the paper. */
export function partsOnPlan(scheme: Scheme, storey: number): Parts {
  const model = planModel(scheme, storey);
  const parts: Parts = new Map(model.units.map(({ container, outline }) => [container.id, boundsOf(outline)]));
  for (const { id, outline } of openingsOnPlan(scheme, model)) parts.set(id, boundsOf(outline));
  for (const { post, at } of model.posts) parts.set(post.id, around(at, sectionWidthMm(post.section) / 2));
  for (const pad of model.pads) parts.set(pad.id, boundsOf(padOutline(pad)));
  for (const { object } of model.objects) parts.set(object.id, boundsOf(pointsOf(object, "plan")));
  return withHosted(scheme, parts);
}

/** Depth of a wall's opening on a plan, mm; for drawing only. */
const wallDepthMm = 120;

function openingsOnPlan(scheme: Scheme, { units }: PlanModel): { id: string; outline: ViewPoint[] }[] {
  const inWalls = units
    .flatMap(({ walls }) => walls)
    .flatMap((wall) =>
      wall.openings.map(({ opening, fromMm, toMm }) => ({
        id: opening.id,
        outline: [onWall(wall, fromMm), onWall(wall, toMm), onWall(wall, toMm, wallDepthMm)],
      })),
    );
  return [...inWalls, ...units.flatMap(({ placed }) => hatchesOf(scheme, placed))];
}

const hatchesOf = (scheme: Scheme, unit: PlacedContainer): { id: string; outline: ViewPoint[] }[] =>
  scheme.openings
    .filter(({ containerId, face }) => containerId === unit.id && (face === "roof" || face === "floor"))
    .map(({ id, face, offsetUm, sillUm, widthUm, heightUm }) => {
      const frame = faceFrame(unit, face);
      const at = (uUm: number, vUm: number) => project("plan", pointOnFace(frame, uUm / 1000, vUm / 1000));
      const [u1, v1] = [offsetUm + widthUm, sillUm + heightUm];
      return { id, outline: [at(offsetUm, sillUm), at(u1, sillUm), at(u1, v1), at(offsetUm, v1)] };
    });

/** What is stated of an element has no place of its own: it is shown where that element is. */
function withHosted(scheme: Scheme, parts: Parts): Parts {
  const hosted = [
    ...scheme.loads.map(({ id, containerId }) => ({ id, hostId: containerId })),
    ...scheme.uses.map(({ id, containerId }) => ({ id, hostId: containerId })),
    ...scheme.overrides.map(({ id, elementId }) => ({ id, hostId: elementId })),
  ];
  for (const { id, hostId } of hosted) {
    const rect = parts.get(hostId);
    if (rect !== undefined) parts.set(id, rect);
  }
  return parts;
}

function pointsOf(object: PlacedObject, projection: Projection): ViewPoint[] {
  const solid = "box" in object ? object.box : "ends" in object ? object.ends : [];
  const outline = object.kind === "load" ? object.outline : [];
  return [object.at, ...solid, ...outline].map((point) => project(projection, point));
}

function join(parts: Parts, id: string, rect: PaperRect): void {
  const other = parts.get(id);
  parts.set(id, other === undefined ? rectOf(rect) : boundsOf([...cornersOf(other), ...cornersOf(rect)]));
}

const rectOf = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect): PaperRect => ({ u0Mm, u1Mm, z0Mm, z1Mm });

const cornersOf = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect): ViewPoint[] => [
  { uMm: u0Mm, vMm: z0Mm },
  { uMm: u1Mm, vMm: z1Mm },
];

function boundsOf(points: readonly ViewPoint[]): PaperRect {
  const us = points.map(({ uMm }) => uMm);
  const vs = points.map(({ vMm }) => vMm);
  return { u0Mm: Math.min(...us), u1Mm: Math.max(...us), z0Mm: Math.min(...vs), z1Mm: Math.max(...vs) };
}

const around = ({ uMm, vMm }: ViewPoint, halfMm: number): PaperRect => ({
  u0Mm: uMm - halfMm,
  u1Mm: uMm + halfMm,
  z0Mm: vMm - halfMm,
  z1Mm: vMm + halfMm,
});

const covers = (face: ElevationFace, place: PaperRect): boolean =>
  face.u0Mm <= place.u0Mm && face.u1Mm >= place.u1Mm && face.z0Mm <= place.z0Mm && face.z1Mm >= place.z1Mm;
