import type { Opening } from "@cornerway/schema";
import { usualAssumptions } from "../../model/model-assumptions.ts";
import { shortestPieceMm, type ConditionLine, type WallFacts } from "../../codes/containers/table-conditions.ts";
import type { TableWall } from "../../codes/containers/wall-shear-table.ts";
import type { Fabric } from "../../fabric/fabric-of.ts";
import { openingRect } from "../../fabric/opening-rect.ts";
import { uncutPieces } from "../../fabric/wall-pieces.ts";
import type { Unit } from "../../geometry/building.ts";

export type WallFace = "left" | "right" | "front" | "door";
export type Stretch = { readonly u0: number; readonly u1: number };

/** One wall of a container as the code's table sees it, from post axis to post axis, mm. */
export type UnitWall = {
  readonly unitId: string;
  readonly face: WallFace;
  readonly table: TableWall;
  readonly facts: WallFacts;
  /** The full-height pieces that are long enough to count, from the front post axis (ends: from the right). */
  readonly pieces: readonly Stretch[];
  readonly heightMm: number;
};

/** A wall with every condition of the table, true or false; it counts where all hold. */
export type JudgedWall = UnitWall & {
  readonly conditions: readonly ConditionLine[];
  readonly counts: boolean;
  /** At allowable level, N; 0 where it does not count. */
  readonly strengthN: number;
};

export const wallFaces: readonly WallFace[] = ["left", "right", "front", "door"];

/** The four walls of a container with what the scheme says of each. Holes that are not drawn are not there. */
export const unitWalls = (unit: Unit, fabric: Fabric): UnitWall[] =>
  wallFaces.map((face) => wallOf(unit, fabric, face));

function wallOf(unit: Unit, fabric: Fabric, face: WallFace): UnitWall {
  const { dimensions, container, id } = unit;
  const isEnd = face === "front" || face === "door";
  const [outer, lengthMm] = isEnd
    ? [dimensions.widthMm, dimensions.holeSpacingCrosswiseMm]
    : [dimensions.lengthMm, dimensions.holeSpacingLengthwiseMm];
  const cuts = unit.openings.filter((opening) => opening.face === face);
  const off = (outer - lengthMm) / 2;
  const whole = cuts.some(({ use }) => use === "open-wall") ? [{ u0: 0, u1: lengthMm }] : [];
  const gone = [...whole, ...cuts.map((cut) => shifted(openingRect(cut), off))];
  const left = uncutPieces(lengthMm, gone);
  const pieces = left.filter(({ u0, u1 }) => u1 - u0 >= shortestPieceMm);
  return {
    unitId: id,
    face,
    table: { type: container.type, wall: isEnd ? "end" : "side" },
    facts: {
      lengthMm,
      openingsMm: lengthMm - total(left),
      piecesMm: pieces.map(({ u0, u1 }) => u1 - u0),
      boundaryOnFourSides: isBounded(fabric, face),
      openingsFramed: cuts.every(isFramed),
      smallHolesWithinLimit: true,
      kind: face === "door" ? "door end" : "sheet",
      doorsWeldedShut: container.doors === "welded shut" && cuts.length === 0,
    },
    pieces,
    heightMm: dimensions.heightMm - usualAssumptions.bottomRailMm - usualAssumptions.topRailBelowTopMm,
  };
}

const isFramed = ({ framed }: Opening): boolean => framed;
const shifted = ({ u0, u1 }: Stretch, off: number): Stretch => ({ u0: u0 - off, u1: u1 - off });
const total = (pieces: readonly Stretch[]): number => pieces.reduce((sum, { u0, u1 }) => sum + u1 - u0, 0);

/** Rails, header, sill and both posts of the wall whole: nothing cuts them from this face, from roof, floor or round the corner. */
function isBounded({ cuts, topRails, postsWhole }: Fabric, face: WallFace): boolean {
  const own = cuts.filter(({ opening }) => opening.face === face);
  const ends = postsOf[face].every((post) => postsWhole[post]);
  const floor = cuts.filter(({ opening }) => opening.face === "floor");
  const bottom = floor.every(({ members }) => members.every((member) => !bottomOf[face].includes(member)));
  return own.every(({ members }) => members.length === 0) && topRails[face].length === 1 && ends && bottom;
}

const postsOf = {
  left: ["front-left", "door-left"],
  right: ["front-right", "door-right"],
  front: ["front-right", "front-left"],
  door: ["door-right", "door-left"],
} as const satisfies Record<WallFace, readonly (keyof Fabric["postsWhole"])[]>;

/** A cut in the floor says which kind of member it takes, not on which side: both sides are out then. */
const bottomOf: Readonly<Record<WallFace, readonly string[]>> = {
  left: ["bottom side rail"],
  right: ["bottom side rail"],
  front: ["bottom end rail"],
  door: ["door sill"],
};
