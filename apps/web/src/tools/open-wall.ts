import { containerDimensions, faceFrame, placeContainer, pointOnFace } from "@cornerway/engine";
import type { Container, Face, Operation, PointMm, Scheme } from "@cornerway/schema";
import { facePoint } from "./face-point.ts";
import { newElementId } from "./new-element-id.ts";
import { nextTags, openingCapital } from "./next-tag.ts";

/** The four walls of a unit. */
export const walls: readonly Face[] = ["left", "right", "front", "door"];
/** Walls this close and back to back are one wall between two rooms. */
const oneWallMm = 60;

interface Wall {
  unit: Container;
  face: Face;
}

/** Takes out the whole sheet of a wall, and of the wall that stands against it; openings in them are closed first. */
export function openWall(scheme: Scheme, unit: Container, face: Face): Operation[] {
  const twin = wallAgainst(scheme, unit, face);
  const opened = [{ unit, face }, ...(twin === null ? [] : [twin])];
  const tags = nextTags(scheme, openingCapital["open-wall"], opened.length);
  return opened.flatMap((wall, at) => [...closeAll(scheme, wall), takeOut(wall, tags[at] ?? "O1")]);
}

/** The wall of another unit that stands against this one at its middle, or null. */
export function wallAgainst(scheme: Scheme, unit: Container, face: Face): Wall | null {
  const own = faceFrame(placeContainer(unit), face);
  const { u1, v1 } = containerDimensions(unit.type).face(face);
  const middle = pointOnFace(own, u1 / 2, v1 / 2);
  for (const other of scheme.containers.filter(({ id }) => id !== unit.id))
    for (const side of walls)
      if (standsAgainst({ unit: other, face: side }, middle, own.normal)) return { unit: other, face: side };
  return null;
}

function standsAgainst({ unit, face }: Wall, point: PointMm, normal: PointMm): boolean {
  const frame = faceFrame(placeContainer(unit), face);
  if (dot(frame.normal, normal) > -0.999) return false;
  const off = dot({ xMm: point.xMm - frame.origin.xMm, yMm: point.yMm - frame.origin.yMm, zMm: 0 }, frame.normal);
  const { uMm, vMm } = facePoint(unit, face, point);
  const { u1, v1 } = containerDimensions(unit.type).face(face);
  return Math.abs(off) <= oneWallMm && uMm > 0 && uMm < u1 && vMm > 0 && vMm < v1;
}

function takeOut({ unit, face }: Wall, tag: string): Operation {
  const { u0, u1, v0, v1 } = containerDimensions(unit.type).sheetZone(face);
  return {
    kind: "opening.cut",
    opening: {
      id: newElementId("o"),
      tag,
      containerId: unit.id,
      face,
      use: "open-wall",
      offsetUm: Math.round(u0 * 1000),
      sillUm: Math.round(v0 * 1000),
      widthUm: Math.round((u1 - u0) * 1000),
      heightUm: Math.round((v1 - v0) * 1000),
      framed: false,
    },
  };
}

const closeAll = (scheme: Scheme, { unit, face }: Wall): Operation[] =>
  scheme.openings
    .filter((opening) => opening.containerId === unit.id && opening.face === face)
    .map(({ id }) => ({ kind: "opening.close", id }));

const dot = (a: PointMm, b: PointMm) => a.xMm * b.xMm + a.yMm * b.yMm + a.zMm * b.zMm;
