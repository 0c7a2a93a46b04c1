import type { FaceRect } from "../catalog/container-dimensions.ts";
import type { Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import type { ActionLoad, Patch } from "../loads/action-case.ts";
import type { ModelCase, ModelNode, Six, Triple } from "./analytical-model.ts";
import type { LoadCarrier } from "./load-carrier.ts";
import type { BuiltUnit } from "./unit-fragment.ts";
import { turnedBack } from "./turn.ts";

/** Loads of one action case on this container, on its own lines and in its own axes. */
export function actionLoads(loads: readonly ActionLoad[], unit: Unit, built: BuiltUnit): ModelCase {
  const onLines = new Map<string, Triple>();
  const onNodes = new Map<string, Triple>();
  const nodal: { node: string; F: Six }[] = [];
  const carried = loads.some(({ kind }) => kind === "point") ? nodesOnBeams(built) : [];
  for (const load of loads) {
    if (load.kind === "own weight") spreadOwnWeight(load.weightN, built, onLines);
    if (load.kind === "on") spread(load.surface, load.patch, DOWN, unit, built, onLines, onNodes);
    if (load.kind === "against") spread(load.face, load.patch, inward(load.face), unit, built, onLines, onNodes);
    if (load.kind === "point") nodal.push(atNearestNode(load, unit, carried));
  }
  for (const [node, [x, y, z]] of onNodes) nodal.push({ node, F: [x, y, z, 0, 0, 0] });
  const beam_udl = [...onLines].map(([beam, q]) => ({ beam, q }));
  return { ...(nodal.length > 0 && { nodal }), ...(beam_udl.length > 0 && { beam_udl }) };
}

const DOWN: Triple = [0, 0, -1];

/** Shares of a container's own weight: floor and base, bottom side rails with half the walls, top side rails with the roof. Common practice, no published source. */
const FLOOR_SHARE = 0.5;
const BOTTOM_SHARE = 0.31;

function inward(face: LoadCarrier["face"]): Triple {
  switch (face) {
    case "left":
      return [0, -1, 0];
    case "right":
      return [0, 1, 0];
    case "front":
      return [1, 0, 0];
    case "door":
      return [-1, 0, 0];
    case "roof":
      return DOWN;
    case "floor":
      return [0, 0, 1];
  }
}

function spreadOwnWeight(weightN: number, built: BuiltUnit, onLines: Map<string, Triple>): void {
  const sides = built.carriers.filter(({ face }) => face === "left" || face === "right");
  share(
    built.carriers.filter(({ face }) => face === "floor"),
    weightN * FLOOR_SHARE,
    onLines,
  );
  share(
    sides.filter(({ beam }) => beam.startsWith("bottomRail")),
    weightN * BOTTOM_SHARE,
    onLines,
  );
  share(
    sides.filter(({ beam }) => !beam.startsWith("bottomRail")),
    weightN * (1 - FLOOR_SHARE - BOTTOM_SHARE),
    onLines,
  );
}

/** Straight down over the carriers, by the area of their strips. */
function share(carriers: readonly LoadCarrier[], weightN: number, onLines: Map<string, Triple>): void {
  const area = carriers.reduce((sum, { lengthMm, stripMm }) => sum + lengthMm * stripMm, 0);
  for (const { beam, stripMm } of carriers) add(onLines, beam, times(DOWN, (weightN * stripMm) / area));
}

const PA_TO_MPA = 1e-6;

function spread(
  face: LoadCarrier["face"],
  patch: Patch,
  direction: Triple,
  unit: Unit,
  built: BuiltUnit,
  onLines: Map<string, Triple>,
  onNodes: Map<string, Triple>,
): void {
  for (const carrier of built.carriers) {
    if (carrier.face !== face) continue;
    const lap = overlap(stripOf(carrier, unit), patch.rect);
    if (lap === null) continue;
    const [u, v] = [(lap.u0 + lap.u1) / 2 - patch.rect.u0, (lap.v0 + lap.v1) / 2 - patch.rect.v0];
    const pressure = patch.pressurePa + patch.alongUPaPerMm * u + patch.alongVPaPerMm * v;
    const force = times(direction, pressure * PA_TO_MPA * (lap.u1 - lap.u0) * (lap.v1 - lap.v0));
    if (isSill(carrier, unit)) toCorners(carrier, force, built, onNodes);
    else add(onLines, carrier.beam, times(force, 1 / carrier.lengthMm));
  }
}

/** The bottom rail of an end, as far as pressure on the end goes. */
const isSill = ({ face, z }: LoadCarrier, { dimensions }: Unit): boolean =>
  (face === "front" || face === "door") && z < dimensions.heightMm / 2;

/**
 * Floor boards run lengthwise and are screwed to the sills: what pushes a sill along the container goes into the floor and
 * does not bend the sill. Common practice, no published source. The corners take it by its lever.
 */
function toCorners({ face, y }: LoadCarrier, force: Triple, built: BuiltUnit, onNodes: Map<string, Triple>): void {
  const end = face === "front" ? "front" : "door";
  const half = built.halfWidthMm;
  add(onNodes, built.corners(end, "left", "foot"), times(force, 0.5 + y / (2 * half)));
  add(onNodes, built.corners(end, "right", "foot"), times(force, 0.5 - y / (2 * half)));
}

/** The part of the face a carrier answers for, as openings are measured; edge strips reach to the outer face. */
function stripOf({ face, x, y, z, lengthMm, stripMm }: LoadCarrier, { dimensions }: Unit): FaceRect {
  const { lengthMm: L, widthMm: W, heightMm: H, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = dimensions;
  const along = stretched(x + L / 2 - lengthMm / 2, x + L / 2 + lengthMm / 2, L, (L - holeSpacingLengthwiseMm) / 2);
  const across = stretched(y + W / 2 - lengthMm / 2, y + W / 2 + lengthMm / 2, W, (W - holeSpacingCrosswiseMm) / 2);
  const half = z < H / 2 ? { v0: 0, v1: stripMm } : { v0: H - stripMm, v1: H };
  switch (face) {
    case "left":
    case "right":
      return { ...along, ...half };
    case "front":
    case "door":
      return { ...across, ...half };
    case "roof":
      return { ...along, ...(y > 0 ? { v0: W / 2, v1: W } : { v0: 0, v1: W / 2 }) };
    case "floor":
      return { ...floorStrip(x, stripMm, L, holeSpacingLengthwiseMm), v0: across.u0, v1: across.u1 };
  }
}

/** Ends that come to the post axis are stretched to the outer face. */
function stretched(from: number, to: number, whole: number, edge: number): { u0: number; u1: number } {
  return { u0: from <= edge + 1 ? 0 : from, u1: to >= whole - edge - 1 ? whole : to };
}

function floorStrip(x: number, stripMm: number, L: number, holes: number): { u0: number; u1: number } {
  const u = x + L / 2;
  const edge = (L - holes) / 2;
  if (Math.abs(u - edge) < 1) return { u0: 0, u1: u + stripMm };
  if (Math.abs(u - (L - edge)) < 1) return { u0: u - stripMm, u1: L };
  return { u0: u - stripMm / 2, u1: u + stripMm / 2 };
}

function overlap(a: FaceRect, b: FaceRect): FaceRect | null {
  const lap = {
    u0: Math.max(a.u0, b.u0),
    u1: Math.min(a.u1, b.u1),
    v0: Math.max(a.v0, b.v0),
    v1: Math.min(a.v1, b.v1),
  };
  return lap.u1 > lap.u0 && lap.v1 > lap.v0 ? lap : null;
}

function nodesOnBeams({ fragment }: BuiltUnit): ModelNode[] {
  const carried = new Set(fragment.beams.flatMap(({ i, j }) => [i, j]));
  return fragment.nodes.filter(({ id }) => carried.has(id));
}

/** A point force goes to the nearest node with the moment that keeps its line of action. */
function atNearestNode(
  load: Extract<ActionLoad, { kind: "point" }>,
  unit: Unit,
  carried: readonly ModelNode[],
): { node: string; F: Six } {
  const { xMm, yMm, zMm } = toLocal(unit.frame, load.at);
  const square = (node: { x: number; y: number; z: number }): number => {
    const [dx, dy, dz] = [node.x - xMm, node.y - yMm, node.z - zMm];
    return dx * dx + dy * dy + dz * dz;
  };
  const [first, ...others] = carried;
  if (first === undefined) throw new RangeError(`container ${unit.id} has no node`);
  const node = others.reduce((best, next) => (square(next) < square(best) ? next : best), first);
  const [a, b, c] = turnedBack(unit.frame, [load.xN, load.yN, load.zN]);
  const [x, y, z] = [xMm - node.x, yMm - node.y, zMm - node.z];
  return { node: node.id, F: [a, b, c, y * c - z * b, z * a - x * c, x * b - y * a] };
}

function times([x, y, z]: Triple, factor: number): Triple {
  return [x * factor, y * factor, z * factor];
}

function add(onLines: Map<string, Triple>, beam: string, q: Triple): void {
  const [x, y, z] = onLines.get(beam) ?? [0, 0, 0];
  onLines.set(beam, [x + q[0], y + q[1], z + q[2]]);
}
