import type { ElevationFace } from "./elevation-faces.ts";
import type { PlanUnit, PlanWall } from "./plan-model.ts";

/** Places a string of dimensions runs through, rising, mm along its line. */
export type DimensionPlaces = readonly number[];

/**
 * Along one storey of an elevation: from the outer face of the corner fitting to the edges of each opening and on to the
 * fitting at the other end, wall after wall; of walls behind each other the nearest.
 */
export function openingPlaces(faces: readonly ElevationFace[]): DimensionPlaces {
  const front = faces.filter(({ beyond }) => !beyond);
  if (!front.some(({ openings }) => openings.length > 0)) return [];
  return rising(
    front.flatMap(({ u0Mm, u1Mm, openings }, at) => {
      const free = (uMm: number): boolean => front.slice(at + 1).every((nearer) => !isWithin(uMm, nearer));
      return [u0Mm, u1Mm, ...openings.flatMap((opening) => [opening.u0Mm, opening.u1Mm])].filter(free);
    }),
  );
}

/** Along the outermost wall of a plan to the south: the same, west to east. Walls that are not square to it bear none. */
export function planOpeningPlaces(units: readonly PlanUnit[]): DimensionPlaces {
  const walls = units.flatMap(({ walls: all }) => all.filter(isLevel));
  const south = Math.min(...walls.map(({ start }) => start.vMm));
  const outermost = walls.filter(({ start }) => start.vMm < south + SAME_WALL_MM);
  if (!outermost.some(({ openings }) => openings.length > 0)) return [];
  return rising(
    outermost.flatMap((wall) => [
      wall.start.uMm,
      wall.end.uMm,
      ...wall.openings.flatMap(({ fromMm, toMm }) => [alongPaper(wall, fromMm), alongPaper(wall, toMm)]),
    ]),
  );
}

/** Walls this near to the outermost stand in one row, mm: a joint, not a setback. */
const SAME_WALL_MM = 160;
/** Places nearer than this are one: the joint of two units is no bay, mm. */
const JOINT_MM = 60;

const isWithin = (uMm: number, { u0Mm, u1Mm }: ElevationFace): boolean =>
  uMm > u0Mm + JOINT_MM && uMm < u1Mm - JOINT_MM;

const isLevel = ({ start, end, inward }: PlanWall): boolean => Math.abs(start.vMm - end.vMm) < 1 && inward.vMm > 0;

const alongPaper = ({ start, end, lengthMm }: PlanWall, atMm: number): number =>
  start.uMm + ((end.uMm - start.uMm) * atMm) / lengthMm;

function rising(placesMm: readonly number[]): number[] {
  const sorted = placesMm.toSorted((a, b) => a - b);
  return sorted.filter((at, n) => n === 0 || at - (sorted[n - 1] ?? at) > JOINT_MM);
}
