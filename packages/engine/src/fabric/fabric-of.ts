import type { Face, MemberName, Opening } from "@cornerway/schema";
import type { FaceRect } from "../catalog/container-dimensions.ts";
import type { Unit } from "../geometry/building.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { crossMembersCut } from "./cross-members-cut.ts";
import { openingRect, rectsLap } from "./opening-rect.ts";
import { protectedMembers } from "./protected-members.ts";
import { uncutPieces, wallPieces, type WallPieces } from "./wall-pieces.ts";

/** What one opening does to the container it is cut in. */
export type Cut = {
  readonly opening: Opening;
  readonly rect: FaceRect;
  readonly offFace: boolean;
  /** Protected members it takes a piece of; empty when it stays in the sheet. */
  readonly members: readonly MemberName[];
  readonly crossMembers: number;
  /** Other openings of the same face, later in the scheme's order, that it runs into. */
  readonly overlaps: readonly Opening[];
  readonly wall: WallPieces;
  /** A whole wall is out: named so by the architect, or nothing of the sheet is left. */
  readonly wallOut: boolean;
};

export type Rail = "left" | "right" | "front" | "door";

/** What is left of one container after its cuts. */
export type Fabric = {
  readonly cuts: readonly Cut[];
  /** Top rails and headers as the pieces that are whole, mm along the rail from the front (ends: from the right). */
  readonly topRails: Readonly<Record<Rail, readonly { readonly u0: number; readonly u1: number }[]>>;
  /** Whether the post under each corner is whole: front-right, front-left, door-right, door-left. */
  readonly postsWhole: Readonly<Record<"front-right" | "front-left" | "door-right" | "door-left", boolean>>;
};

/** The fabric of one container: every opening held against rails, posts, sills, headers and the other openings. */
export function fabricOf(unit: Unit): Fabric {
  const cuts = faces.flatMap((face) => faceCuts(unit, face)).toSorted((a, b) => (a.opening.id < b.opening.id ? -1 : 1));
  return { cuts, topRails: topRailPieces(unit, cuts), postsWhole: wholePosts(unit, cuts) };
}

const faces: readonly Face[] = ["left", "right", "front", "door", "roof", "floor"];

function faceCuts(unit: Unit, face: Face): Cut[] {
  const { dimensions } = unit;
  const outline = dimensions.face(face);
  const drawn = unit.openings
    .filter((opening) => opening.face === face)
    .map((opening) => ({ opening, rect: openingRect(opening) }));
  if (drawn.length === 0) return [];
  const wall = wallPieces(
    outline.u1,
    drawn.map(({ rect }) => rect),
  );
  return drawn.map(({ opening, rect }) => ({
    opening,
    rect,
    offFace: !within(outline, rect),
    members: membersCut(unit, face, rect),
    crossMembers: face === "floor" ? crossMembersCut(dimensions, rect) : 0,
    overlaps: drawn
      .filter((other) => other.opening.id > opening.id && rectsLap(rect, other.rect, touchMm))
      .map((other) => other.opening),
    wall,
    wallOut: opening.use === "open-wall" || covers(rect, dimensions.sheetZone(face)),
  }));
}

function membersCut(unit: Unit, face: Face, rect: FaceRect): MemberName[] {
  const cut = protectedMembers(unit.dimensions, face)
    .filter(({ strip }) => rectsLap(strip, rect, touchMm))
    .map(({ member }) => member);
  return cut.filter((member, at) => cut.indexOf(member) === at);
}

const within = (outline: FaceRect, rect: FaceRect): boolean =>
  rect.u0 >= outline.u0 - touchMm &&
  rect.u1 <= outline.u1 + touchMm &&
  rect.v0 >= outline.v0 - touchMm &&
  rect.v1 <= outline.v1 + touchMm;

const covers = (rect: FaceRect, sheet: FaceRect): boolean =>
  rect.u0 <= sheet.u0 + touchMm &&
  rect.u1 >= sheet.u1 - touchMm &&
  rect.v0 <= sheet.v0 + touchMm &&
  rect.v1 >= sheet.v1 - touchMm;

function topRailPieces(unit: Unit, cuts: readonly Cut[]): Fabric["topRails"] {
  const { dimensions } = unit;
  const roof = dimensions.sheetZone("roof");
  const pieces = (rail: Rail, lengthMm: number, touched: (cut: FaceRect) => boolean, along: "u" | "v") => {
    const own = cuts.filter(
      ({ opening, rect }) => opening.face === rail && rect.v1 > dimensions.sheetZone(rail).v1 + touchMm,
    );
    const fromRoof = cuts.filter(({ opening, rect }) => opening.face === "roof" && touched(rect));
    return uncutPieces(lengthMm, [
      ...own.map(({ rect }) => rect),
      ...fromRoof.map(({ rect }) => (along === "u" ? rect : { u0: rect.v0, u1: rect.v1 })),
    ]);
  };
  return {
    left: pieces("left", dimensions.lengthMm, ({ v1 }) => v1 > roof.v1 + touchMm, "u"),
    right: pieces("right", dimensions.lengthMm, ({ v0 }) => v0 < roof.v0 - touchMm, "u"),
    front: pieces("front", dimensions.widthMm, ({ u0 }) => u0 < roof.u0 - touchMm, "v"),
    door: pieces("door", dimensions.widthMm, ({ u1 }) => u1 > roof.u1 + touchMm, "v"),
  };
}

function wholePosts({ dimensions }: Unit, cuts: readonly Cut[]): Fabric["postsWhole"] {
  const hits = (face: Face, atEnd: boolean) =>
    cuts.some(({ opening, rect }) => {
      if (opening.face !== face) return false;
      const { u0, u1 } = dimensions.sheetZone(face);
      return atEnd ? rect.u1 > u1 + touchMm : rect.u0 < u0 - touchMm;
    });
  return {
    "front-right": !hits("right", false) && !hits("front", false),
    "front-left": !hits("left", false) && !hits("front", true),
    "door-right": !hits("right", true) && !hits("door", false),
    "door-left": !hits("left", true) && !hits("door", true),
  };
}
