import type { Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import type { StubMovement, UnitLoad } from "./loads-on-units.ts";
import type { ActionLoad, Patch } from "../loads/action-case.ts";
import type { ModelCase, ModelNode, Six, Triple } from "./analytical-model.ts";
import { betweenRails } from "./between-rails.ts";
import { carrierStrips, type CarrierStrip } from "./carrier-strips.ts";
import type { LoadCarrier, LoadedFace } from "./load-carrier.ts";
import { SumByName } from "./sum-by-name.ts";
import type { BuiltUnit } from "./unit-fragment.ts";
import { turnedBack } from "./turn.ts";

/** Loads of action cases on this container, on its own lines and in its own axes. */
export function actionLoader(unit: Unit, built: BuiltUnit): (loads: readonly UnitLoad[]) => ModelCase {
  const strips = carrierStrips(built.carriers, unit);
  const onLines = new SumByName();
  const onNodes = new SumByName();
  const nearest = nearestNodes(unit, built);
  const between = betweenRails(built);
  return (loads) => {
    const nodal: { node: string; F: Six }[] = [];
    for (const load of loads) {
      if (load.kind === "own weight") spreadOwnWeight(load.weightN, built, onLines);
      if (load.kind === "on") spread(load.surface, load.patch, DOWN);
      if (load.kind === "against") spread(load.face, load.patch, inward(load.face));
      if (load.kind === "stub") nodal.push(...shortened(load, built));
      if (load.kind === "point") nodal.push(...point(load));
    }
    for (const [node, [x, y, z]] of onNodes.taken()) nodal.push({ node, F: [x, y, z, 0, 0, 0] });
    const beam_udl = onLines.taken().map(([beam, q]) => ({ beam, q }));
    return { ...(nodal.length > 0 && { nodal }), ...(beam_udl.length > 0 && { beam_udl }) };
  };

  function point(load: PointLoad): { node: string; F: Six }[] {
    const { surface } = load;
    if (surface === undefined) return [atNode(load, unit, nearest)];
    const { nodal, beam_udl } = between({ surface, ...toLocal(unit.frame, load.at), downN: -load.zN });
    for (const { beam, q } of beam_udl) onLines.add(beam, q, 1);
    return load.xN === 0 && load.yN === 0 ? nodal : [atNode({ ...load, zN: 0 }, unit, nearest), ...nodal];
  }

  function spread(face: LoadedFace, patch: Patch, direction: Triple): void {
    for (const strip of strips.get(face) ?? []) {
      const forceN = forceOn(strip, patch);
      if (forceN === null) continue;
      const { carrier } = strip;
      if (isSill(carrier, unit)) toCorners(carrier, times(direction, forceN), built, onNodes);
      else onLines.add(carrier.beam, direction, forceN / carrier.lengthMm);
    }
  }
}

/**
 * A stub that is shorter than drawn, as the two forces that make it so: where it bears it moves against its rail by that much,
 * and what the stub then carries is what bears there and these forces. No check looks at a stub.
 */
function shortened({ seat, downMm }: StubMovement, built: BuiltUnit): { node: string; F: Six }[] {
  const { rail, point, stiffness } = built.stub(seat);
  // down: the underside of a rail comes nearer to it, what lies on one goes down to it
  const forceN = stiffness * downMm * (seat.rail === "bottom" ? 1 : -1);
  return [
    { node: point, F: [0, 0, forceN, 0, 0, 0] },
    { node: rail, F: [0, 0, -forceN, 0, 0, 0] },
  ];
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

function spreadOwnWeight(weightN: number, built: BuiltUnit, onLines: SumByName): void {
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
function share(carriers: readonly LoadCarrier[], weightN: number, onLines: SumByName): void {
  const area = carriers.reduce((sum, { lengthMm, stripMm }) => sum + lengthMm * stripMm, 0);
  for (const { beam, stripMm } of carriers) onLines.add(beam, DOWN, (weightN * stripMm) / area);
}

const PA_TO_MPA = 1e-6;

/** What a patch puts on a strip, N; null where they do not meet. */
function forceOn({ rect }: CarrierStrip, patch: Patch): number | null {
  const [u0, u1] = [Math.max(rect.u0, patch.rect.u0), Math.min(rect.u1, patch.rect.u1)];
  const [v0, v1] = [Math.max(rect.v0, patch.rect.v0), Math.min(rect.v1, patch.rect.v1)];
  if (!(u1 > u0 && v1 > v0)) return null;
  const [u, v] = [(u0 + u1) / 2 - patch.rect.u0, (v0 + v1) / 2 - patch.rect.v0];
  const pressure = patch.pressurePa + patch.alongUPaPerMm * u + patch.alongVPaPerMm * v;
  return pressure * PA_TO_MPA * (u1 - u0) * (v1 - v0);
}

/** The bottom rail of an end, as far as pressure on the end goes. */
const isSill = ({ face, z }: LoadCarrier, { dimensions }: Unit): boolean =>
  (face === "front" || face === "door") && z < dimensions.heightMm / 2;

/**
 * Floor boards run lengthwise and are screwed to the sills: what pushes a sill along the container goes into the floor and
 * does not bend the sill. Common practice, no published source. The corners take it by its lever.
 */
function toCorners({ face, y }: LoadCarrier, force: Triple, built: BuiltUnit, onNodes: SumByName): void {
  const end = face === "front" ? "front" : "door";
  const half = built.halfWidthMm;
  onNodes.add(built.corners(end, "left", "foot"), force, 0.5 + y / (2 * half));
  onNodes.add(built.corners(end, "right", "foot"), force, 0.5 - y / (2 * half));
}

type PointLoad = Extract<ActionLoad, { kind: "point" }>;

/** The node on a beam nearest to a place of the site; cases load the same places again and again. */
function nearestNodes(unit: Unit, { fragment }: BuiltUnit): (at: PointLoad["at"]) => ModelNode {
  const known = new Map<string, ModelNode>();
  let carried: readonly ModelNode[] | undefined;
  return (at) => {
    const key = `${at.xMm} ${at.yMm} ${at.zMm}`;
    carried ??= nodesOnBeams(fragment);
    const node = known.get(key) ?? nearestOf(carried, toLocal(unit.frame, at), unit.id);
    known.set(key, node);
    return node;
  };
}

function nodesOnBeams({ beams, nodes }: BuiltUnit["fragment"]): ModelNode[] {
  const carried = new Set(beams.flatMap(({ i, j }) => [i, j]));
  return nodes.filter(({ id }) => carried.has(id));
}

function nearestOf(carried: readonly ModelNode[], { xMm, yMm, zMm }: PointLoad["at"], unitId: string): ModelNode {
  const [first] = carried;
  if (first === undefined) throw new RangeError(`container ${unitId} has no node`);
  let [nearest, least] = [first, Infinity];
  for (const node of carried) {
    const dx = node.x - xMm;
    const dy = node.y - yMm;
    const dz = node.z - zMm;
    const square = dx * dx + dy * dy + dz * dz;
    if (square < least) [nearest, least] = [node, square];
  }
  return nearest;
}

/** A point force goes to the nearest node with the moment that keeps its line of action. */
function atNode(load: PointLoad, unit: Unit, nearest: (at: PointLoad["at"]) => ModelNode): { node: string; F: Six } {
  const node = nearest(load.at);
  const { xMm, yMm, zMm } = toLocal(unit.frame, load.at);
  const [a, b, c] = turnedBack(unit.frame, [load.xN, load.yN, load.zN]);
  const [x, y, z] = [xMm - node.x, yMm - node.y, zMm - node.z];
  return { node: node.id, F: [a, b, c, y * c - z * b, z * a - x * c, x * b - y * a] };
}

function times([x, y, z]: Triple, factor: number): Triple {
  return [x * factor, y * factor, z * factor];
}
