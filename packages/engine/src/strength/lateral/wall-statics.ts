import { rigidDiaphragm } from "../../loads/rigid-diaphragm.ts";
import type { LateralLine } from "../../loads/seismic-storey.ts";
import type { Unit } from "../../geometry/building.ts";
import { bearingForce, type ModelledBearing } from "../modelled-bearings.ts";
import type { SolvedRun } from "../solve-runs.ts";
import type { JudgedWall, WallFace } from "./unit-walls.ts";

/**
 * What each counted wall of a container takes where nothing else may count: the level force its bearings pass on, at its
 * middle, on a stiff floor held by the counted walls alone. Undefined for a wall the force does not reach.
 */
export function wallStatics(unit: Unit, walls: readonly JudgedWall[], own: readonly ModelledBearing[]) {
  const lines = walls.map((wall) => lineOf(unit, wall));
  const { dimensions, frame } = unit;
  const [x, y] = [dimensions.holeSpacingLengthwiseMm / 2, dimensions.holeSpacingCrosswiseMm / 2];
  const outline = { x0Mm: -x, x1Mm: x, y0Mm: -y, y1Mm: y };
  const perNewton = {
    x: rigidDiaphragm(lines, outline, "x", 1, 0),
    y: rigidDiaphragm(lines, outline, "y", 1, 0),
  };
  const part = (axis: "x" | "y", face: WallFace): number =>
    perNewton[axis]?.lineForcesN.find(({ id }) => id === face)?.forceN ?? 0;
  return (face: WallFace, solved: SolvedRun): number => {
    const [sx, sy] = own.reduce<readonly [number, number]>(
      ([fx, fy], bearing) => {
        const [bx, by] = bearingForce(bearing, solved);
        return [fx + bx, fy + by];
      },
      [0, 0],
    );
    const [along, across] = [sx * frame.cos + sy * frame.sin, sy * frame.cos - sx * frame.sin];
    // the two shares may add or relieve; either sign of the mass off its place is among the runs
    return Math.abs(along * part("x", face)) + Math.abs(across * part("y", face));
  };
}

/** In the container's own axes, the middle at the origin; stiffness in proportion to what counts of its length. */
function lineOf({ dimensions }: Unit, { face, facts, heightMm }: JudgedWall): LateralLine {
  const lengthMm = facts.piecesMm.reduce((sum, piece) => sum + piece, 0);
  const [x, y] = [dimensions.holeSpacingLengthwiseMm / 2, dimensions.holeSpacingCrosswiseMm / 2];
  const place = { left: y, right: -y, front: -x, door: x }[face];
  return {
    id: face,
    axis: face === "left" || face === "right" ? "x" : "y",
    atMm: place,
    lengthMm,
    heightMm,
    stiffnessNPerMm: lengthMm / heightMm,
    strengthN: lengthMm,
  };
}
