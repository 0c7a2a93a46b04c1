import type { Mark, PointMm, WallFacts } from "@cornerway/schema";
import { wallRules } from "../catalog/wall-rules.ts";
import type { Structure } from "../bearing/structure.ts";
import type { Cut } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { BARE_EDGE_MM } from "../model/bare-edges.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { joinsAnother } from "./joins-another.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** What the openings of one unit do to it: members cut, openings over each other or off the face, holes in sheets. */
export const fabricMarks = (structure: Structure, unit: Unit): Mark[] =>
  structure.fabric(unit.id).cuts.flatMap((cut) => cutMarks(structure, unit, cut));

function cutMarks(structure: Structure, unit: Unit, cut: Cut): Mark[] {
  const at = middleOf(unit, cut);
  if (cut.offFace) return [offFaceMark(unit, cut, at)];
  return [
    ...cut.members.map((member) => memberMark(unit, cut, member, at)),
    ...cut.overlaps.map((other) => overlapMark(unit, cut, other.id, at)),
    ...sheetMarks(structure, unit, cut, at),
  ];
}

function middleOf(unit: Unit, { opening, rect }: Cut): PointMm {
  return pointOnFace(faceFrame(unit, opening.face), (rect.u0 + rect.u1) / 2, (rect.v0 + rect.v1) / 2);
}

const offFaceMark = (unit: Unit, { opening }: Cut, at: PointMm): Mark =>
  markOf({
    fact: { kind: "opening-off-face", face: opening.face },
    verdict: "does not work",
    certainty: "published",
    elements: [opening.id, unit.id],
    at,
    basis: "Geometry: the opening reaches beyond the outline of its face (ISO 668 external dimensions).",
  });

function memberMark(unit: Unit, cut: Cut, member: Cut["members"][number], at: PointMm): Mark {
  return markOf({
    fact: { kind: "member-cut", member, face: cut.opening.face, cut: stageOf(cut) },
    verdict: "does not work",
    certainty: "common practice",
    elements: [cut.opening.id, unit.id],
    part: member,
    at,
    basis:
      "A unit whose corner post, rail, header or sill is cut is cladding on a new frame. Common practice, no published source; member sizes of the generic specification.",
  });
}

const overlapMark = (unit: Unit, { opening }: Cut, otherId: string, at: PointMm): Mark =>
  markOf({
    fact: { kind: "openings-overlap" },
    verdict: "does not work",
    certainty: "derived",
    elements: [opening.id, otherId, unit.id],
    at,
    basis: "Geometry: two openings of one face take the same piece of it.",
  });

/** What an opening does to the sheet; where it cuts a member that has been said, and the sheet decides nothing more. */
function sheetMarks(structure: Structure, unit: Unit, cut: Cut, at: PointMm): Mark[] {
  if (cut.opening.face === "floor") return [crossMembersMark(unit, cut, at)];
  if (cut.members.length > 0) return [];
  if (cut.wallOut && cut.opening.face !== "door" && cut.opening.face !== "roof")
    return [wallOutMark(structure, unit, cut, at)];
  return [openingMark(unit, cut, at)];
}

const crossMembersMark = (unit: Unit, cut: Cut, at: PointMm): Mark =>
  markOf({
    fact: { kind: "cross-members-cut", count: cut.crossMembers, cut: stageOf(cut) },
    verdict: "not checked",
    certainty: "common practice",
    elements: [cut.opening.id, unit.id],
    at,
    basis: "Cross members taken at 300 mm centres (range 250 to 310), no published source. Trimming not judged.",
  });

const wallOutMark = (structure: Structure, unit: Unit, cut: Cut, at: PointMm): Mark =>
  markOf({
    fact: {
      kind: "wall-out",
      face: cut.opening.face,
      widthMm: rounded(cut.rect.u1 - cut.rect.u0),
      joins: joinsAnother(structure, unit, cut),
      cut: stageOf(cut),
      wall: wallFactsOf(cut),
    },
    verdict: "not checked",
    certainty: "memory",
    elements: [cut.opening.id, unit.id],
    at,
    basis: `The side sheet is the web between the rails; without it the rails must span by themselves. ${wallBasis}`,
  });

const openingMark = (unit: Unit, cut: Cut, at: PointMm): Mark => {
  const { opening, rect } = cut;
  const { u0, u1 } = unit.dimensions.sheetZone(opening.face);
  const wall = wallFactsOf(cut);
  const isWall = wall.wallRule !== "not a wall";
  return markOf({
    fact: {
      kind: "opening-in-sheet",
      face: opening.face,
      widthMm: rounded(rect.u1 - rect.u0),
      toFrontPostMm: rounded(rect.u0 - u0),
      toDoorPostMm: rounded(u1 - rect.u1),
      cut: stageOf(cut),
      ...(isWall && !opening.framed && { bareMm: BARE_EDGE_MM }),
      ...wall,
    },
    verdict: "not checked",
    certainty: isWall ? "memory" : "common practice",
    elements: [opening.id, unit.id],
    at,
    basis: isWall ? wallBasis : clearBasis,
  });
};

const clearBasis =
  "Geometry against the members of the generic specification. Strength of the sheet and of the frame round the opening not judged.";
const wallBasis =
  "IBC 3115.8.5 (numbering of 2021), from memory, confirm against the text: openings at most 50 % of a wall's length, pieces under 4 ft (1219 mm) do not count. Strength of the sheet not judged.";

/** When it is cut: dead load acts on the structure that exists then. */
const stageOf = ({ opening }: Cut) => opening.cut ?? ("in the yard" as const);

const wallFactsOf = ({ opening, wall }: Cut): WallFacts => ({
  cutShare: rounded(wall.cutShare),
  shortestPierMm: rounded(wall.shortestPierMm),
  wallRule: wallRuleOf(opening.face, wall),
});

function wallRuleOf(face: Cut["opening"]["face"], wall: Cut["wall"]): WallFacts["wallRule"] {
  if (face === "roof" || face === "floor" || face === "door") return "not a wall";
  const tooMuch = wall.cutShare > wallRules.mostCutShare.value;
  const tooShort = wall.shortestPierMm < wallRules.leastPier.value;
  if (tooMuch) return tooShort ? "more than half cut and pier under 4 ft" : "more than half cut";
  return tooShort ? "pier under 4 ft" : "keeps both";
}
