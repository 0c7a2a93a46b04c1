import type { Assessment, Container, Face, Opening, Operation, PointMm, Scheme } from "@cornerway/schema";
import type { PickedElement } from "../drawing/contract.ts";
import { project } from "../drawing/view-transform.ts";
import type { Projection } from "../drawing/view-transform.ts";
import type { ToolName } from "../sheet/contract.ts";
import { facePoint } from "../tools/face-point.ts";
import { moveUnit } from "../tools/move-unit.ts";
import { openWall } from "../tools/open-wall.ts";
import { placeUnit } from "../tools/place-unit.ts";
import { setPost, snapPost } from "../tools/set-post.ts";
import { turnUnit } from "../tools/turn-unit.ts";
import { alignedPlaces } from "../tools/align-unit.ts";
import { beamEnd } from "./beam-end.ts";
import { beamTo } from "./carried.ts";
import type { Held } from "./held.ts";
import { nearestWall } from "./nearest-wall.ts";

export interface Press {
  scheme: Scheme;
  assessment: Assessment | null;
  tool: ToolName | null;
  held: Held | null;
  picked: PickedElement | null;
  chosenIds: readonly string[];
  at: PointMm;
  projection: Projection;
  reachMm: number;
  /** True while Shift is down. */
  also?: boolean;
}

/** What a press on the drawing comes to: something drawn, something taken up, a choice, or words on why not. */
export type Pressed =
  | { kind: "draw"; operations: Operation[] }
  | { kind: "hold"; held: Held }
  | { kind: "choose"; id: string | null }
  | { kind: "also"; id: string }
  | { kind: "cannot"; why: string };

export function press(given: Press): Pressed {
  const { tool, held, picked, scheme } = given;
  if (tool === "stack" && held?.kind === "unit") return { kind: "draw", operations: placeUnit(scheme, held.unit) };
  if (held?.kind === "beam") return pressBeam(given, held);
  if (tool === "post") return pressPost(given);
  const unit = scheme.containers.find(({ id }) => id === picked?.id);
  if (tool === "turn" && unit !== undefined)
    return { kind: "draw", operations: moveUnit(scheme, turnUnit(unit, 90_000)) };
  if (tool === "cut" && unit !== undefined && picked !== null) return startCut(given, unit, picked);
  if (tool === "open-wall" && picked !== null) return pressWall(scheme, picked, unit);
  return takeUp(given);
}

/** Without a tool: chooses, takes hold of what is chosen, or draws a band round what is to be. */
function takeUp({ scheme, picked, chosenIds, also = false, projection, at, tool }: Press): Pressed {
  if (picked === null && tool !== null) return { kind: "choose", id: null };
  if (picked === null)
    return { kind: "hold", held: { kind: "band", projection, from: at, to: at, also, operations: [] } };
  const { id, edges } = picked;
  if (edges !== undefined) return { kind: "hold", held: { kind: "edges", id, edges, operations: [] } };
  if (also) return { kind: "also", id };
  if (chosenIds.length > 1 && chosenIds.includes(id))
    return { kind: "hold", held: { kind: "group", id, ids: chosenIds, projection, from: at, operations: [] } };
  return {
    kind: "hold",
    held: { kind: "element", id, projection, from: at, places: alignedPlaces(scheme, id), operations: [] },
  };
}

function pressBeam(given: Press, { from }: Extract<Held, { kind: "beam" }>): Pressed {
  if (from === null)
    return { kind: "hold", held: { kind: "beam", from: beamEnd(given.scheme, given, null), operations: [] } };
  const operations = beamTo(given.scheme, from, given);
  if (operations.length === 0) return { kind: "cannot", why: "The two ends of a beam are apart in plan." };
  return { kind: "draw", operations };
}

function startCut({ projection }: Press, unit: Container, picked: PickedElement): Pressed {
  if (projection === "plan" || picked.face === undefined)
    return { kind: "cannot", why: "Cut on the elevation, where the wall is seen." };
  const from = facePoint(unit, picked.face, picked.at);
  return {
    kind: "hold",
    held: { kind: "cut", containerId: unit.id, face: picked.face, from, to: from, operations: [] },
  };
}

function pressWall(scheme: Scheme, picked: PickedElement, unit: Container | undefined): Pressed {
  const wall =
    unit === undefined ? wallOfOpening(scheme, picked.id) : { unit, face: picked.face ?? nearestWall(unit, picked.at) };
  if (wall === null) return { kind: "cannot", why: "Choose a wall to open." };
  return { kind: "draw", operations: openWall(scheme, wall.unit, wall.face) };
}

function wallOfOpening(scheme: Scheme, id: string): { unit: Container; face: Face } | null {
  const opening: Opening | undefined = scheme.openings.find((cut) => cut.id === id);
  const unit = scheme.containers.find((container) => container.id === opening?.containerId);
  return opening === undefined || unit === undefined ? null : { unit, face: opening.face };
}

function pressPost({ scheme, assessment, picked, at, projection, reachMm }: Press): Pressed {
  const held = scheme.containers.find(({ id, zUm }) => id === picked?.id && zUm > scheme.site.groundZUm)?.id;
  const place = picked?.at ?? at;
  const across = (a: { xMm: number; yMm: number }, b: { xMm: number; yMm: number }) =>
    projection === "plan"
      ? Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm)
      : Math.abs(project(projection, { ...a, zMm: 0 }).uMm - project(projection, { ...b, zMm: 0 }).uMm) +
        depthWeight *
          Math.abs(project(projection, { ...a, zMm: 0 }).depthMm - project(projection, { ...b, zMm: 0 }).depthMm);
  const operations = setPost(scheme, snapPost(scheme, assessment, place, reachMm, across, held), held);
  if (operations === null) return { kind: "cannot", why: "There is no unit above this place for a post to hold." };
  return { kind: "draw", operations };
}

/** In an elevation the nearer of two bearings on one line of sight is meant. */
const depthWeight = 0.01;
