import type { CheckBasis } from "../checks/check-basis.ts";
import type { Unit } from "../geometry/building.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import { bowingOf, bowParts, type Bowing } from "./bow-parts.ts";
import { cornerPostPart, leastPostInertiaMm4, type PostStretch } from "./corner-post-part.ts";
import { frameWeldPart } from "./frame-weld-parts.ts";
import { memberPart, sureMemberPart } from "./member-part.ts";
import { memberStretches } from "./member-stretches.ts";
import { holdingEndParts } from "./holding-end-parts.ts";
import { PartsMade } from "./parts-made.ts";
import { besideSeatParts, isBesideSeat, type SeatLength } from "./rail-twist-parts.ts";
import { roofDiaphragm } from "./roof-diaphragm.ts";
import { sheetPart } from "./sheet-part.ts";
import { sheetPieces } from "./sheet-pieces.ts";
import type { LineForces, SolvedRun } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { StrengthPart } from "./strength-part.ts";
import { surePostPart } from "./sure-post-part.ts";
import { unitBeams, type UnitBeam } from "./unit-beams.ts";

/**
 * Everything of one container that is checked: members, corner posts, sheets of its walls. `made` has what is checked of stretches
 * that were there before.
 */
export function unitParts(
  unit: Unit,
  { fragment }: PlacedUnit,
  lines: UnitLines,
  sectionOfPost: (side: "left" | "right", uMm: number) => string,
  strengthBasis: StrengthBasis,
  made: PartsMade = new PartsMade(),
  lengthOf: SeatLength = () => 0,
): StrengthPart[] {
  const { factored: basis } = strengthBasis;
  const beams = unitBeams(fragment, lines);
  const { id } = unit;
  const forces = (solved: SolvedRun): LineForces => solved.inner(id);
  const stretches = memberStretches(id, beams, lines, sectionOfPost);
  const besideSeat = isBesideSeat(lines);
  const offSeats = stretches.map((one) => ({ ...one, beams: one.beams.filter((beam) => !besideSeat(beam)) }));
  const bottomRail = stretches.find(({ member }) => member.element === "bottom side rail");
  return [
    ...offSeats.flatMap((stretch) =>
      made.takeStretch(strengthBasis, [id, { ...stretch, beams: stretch.beams.map(lineOf) }], () => [
        memberPart({ ...stretch, ownerId: id, forces }, basis),
      ]),
    ),
    ...offSeats.flatMap((stretch) =>
      made.takeStretch(strengthBasis, [id, "sure", { ...stretch, beams: stretch.beams.map(lineOf) }], () =>
        sureMemberPart({ ...stretch, ownerId: id, forces }, basis),
      ),
    ),
    ...stretches.flatMap((stretch) => besideSeatParts({ ...stretch, ownerId: id, forces }, lines, lengthOf, basis)),
    ...(bottomRail === undefined ? [] : holdingEndParts(id, beams, lines, forces, basis, bottomRail.member)),
    ...stretches
      .filter(({ member }) => member.element === "jamb" || member.element === "added beam")
      .flatMap((stretch) => frameWeldPart({ ...stretch, ownerId: id, forces }, lines, basis)),
    ...bowParts(id, [...stretches.flatMap(bowingOf), ...bowingPosts(beams, lines)], forces, basis),
    ...cornerPosts(id, beams, lines, basis),
    ...[...sheetPieces(fragment, lines), ...roofDiaphragm(fragment, lines)].map((piece) =>
      sheetPart({ ...piece, ownerId: id }, basis),
    ),
  ];
}

/** What a member's check takes of its lines. */
const lineOf = ({ id, lengthMm }: UnitBeam) => [id, lengthMm];

/** Corner posts as the outline alone, its softer way, between the rails. */
const bowingPosts = (beams: readonly UnitBeam[], lines: UnitLines): Bowing[] =>
  (["front", "door"] as const).map((end) => ({
    element: `${end} corner post`,
    inertiaMm4: leastPostInertiaMm4,
    lengthMm: lines.topRailMm - lines.bottomRailMm,
    beams: beams.filter(({ kind, uMm }) => kind === "post" && uMm < lines.lengthMm / 2 === (end === "front")),
  }));

/** No opening within about two folds of a front post, on the side or on the end. Doors are no sheet. */
function isSheeted({ openings, widthMm }: UnitLines, side: "left" | "right"): boolean {
  return openings.every(({ wall, u0, u1 }) => {
    if (wall === side) return u0 > SHEET_MM;
    if (wall === "front") return side === "right" ? u0 > SHEET_MM : u1 < widthMm - SHEET_MM;
    return true;
  });
}

/** Two folds of a side sheet. */
const SHEET_MM = 556;

function cornerPosts(ownerId: string, beams: readonly UnitBeam[], lines: UnitLines, basis: CheckBasis): StrengthPart[] {
  return (["front", "door"] as const).flatMap((end) =>
    (["left", "right"] as const).flatMap((side) => {
      const post: PostStretch = {
        ownerId,
        element: `${end} corner post`,
        place: side,
        clearMm: lines.topRailMm - lines.bottomRailMm,
        sheeted: end === "front" && isSheeted(lines, side),
        beams: beams.filter(
          (beam) => beam.kind === "post" && beam.side === side && beam.uMm < lines.lengthMm / 2 === (end === "front"),
        ),
      };
      return [cornerPostPart(post, basis), surePostPart(post, basis)];
    }),
  );
}
