import { assumedDoorHeader, containerMembers } from "../catalog/sections/container-members.ts";
import { corrugatedSheet, folds, type Fold } from "../catalog/sections/corrugated-sheet.ts";
import { statedTie } from "../catalog/stated-tie.ts";
import { frameTube } from "../catalog/sections/frame-tubes.ts";
import { poissonRatio, steelModulus } from "../catalog/materials.ts";
import type { PressedSection, Section } from "../catalog/sections/section.ts";
import type { ModelSection } from "./analytical-model.ts";
import type { SheetStiffness, UnitLines } from "./unit-lines.ts";

/** What a line model takes for granted where the scheme says nothing; every entry may be overridden. */
export interface ModelAssumptions {
  readonly sections: UnitLines["sections"];
  /** In place of those of `sections` in units of 20 ft and shorter. */
  readonly shortRail: Pick<UnitLines["sections"], "bottomRail" | "bottomRailAtSeat">;
  readonly sideSheet: SheetStiffness;
  readonly frontSheet: SheetStiffness;
  /** Shear of the floor and of the roof between the side rails, N/mm; roof across, N/mm per mm. */
  readonly floorShear: number;
  readonly roofShear: number;
  readonly roofAcross: number;
  /** Rail axes above the underside and below the top of the fittings, mm. */
  readonly bottomRailMm: number;
  readonly topRailBelowTopMm: number;
  /** Stiffness of a bearing or of a hold between units, N/mm. */
  readonly bearingStiffness: number;
  /** Stiffness of a tie between units across the gap and along it, where it states none, N/mm. */
  readonly tieStiffness: { readonly across: number; readonly along: number };
  /** Locks at play hold each unit by one bearing both ways and one across; tied holds every bearing both ways, those without lock or weld up to friction. */
  readonly holds: "locks at play" | "tied";
  /** Cross-member spacing aimed at, mm. */
  readonly crossMemberSpacingMm: number;
}

const E = steelModulus.valueMpa;
const G = E / (2 * (1 + poissonRatio.value));

/** A catalogue section as a line: Iy bends upright. */
export function lineSection(section: Section): ModelSection {
  if (section.kind === "angle")
    return {
      E,
      G,
      A: section.areaMm2,
      Iy: section.iMm4,
      Iz: section.iMm4,
      J: (section.areaMm2 * section.thicknessMm * section.thicknessMm) / 3,
    };
  return { E, G, A: section.areaMm2, Iy: section.ixMm4, Iz: section.iyMm4, J: section.jMm4 };
}

const CROSS_MEMBER_SPACING_MM = 308;

/**
 * A bottom rail between the cross members on either side of a seat. So short an open shape resists twisting by its flanges, not by
 * G J: point torque in the middle of a space, held against turning at both of its ends and free to warp there, E Cw over s as a
 * beam's E I over its span, 48 E Cw/s³ against 4 G J/s. Off the middle it is stiffer still; what either end takes goes by the lever
 * all the same. Derived (Vlasov).
 */
export function railAtSeat(section: PressedSection): ModelSection {
  const line = lineSection(section);
  const warping = (12 * E * section.cwMm6) / (G * CROSS_MEMBER_SPACING_MM * CROSS_MEMBER_SPACING_MM);
  return { ...line, J: line.J + warping };
}

/**
 * Stiffness of a corrugated sheet of this thickness: shear G·t·pitch/developed, upright E·t·developed/pitch, along the wall
 * E·t³/(12(1−ν²))·pitch/∮z²ds. Derived; checked against a fold-by-fold shell model (shared/reference/walls.json).
 */
export function sheetStiffness(fold: Fold, thicknessMm: number): SheetStiffness {
  const { pitchMm, developedMm, iPitchMm4 } = corrugatedSheet(fold, thicknessMm);
  const squareOffsets = iPitchMm4 / thicknessMm; // ∮z²ds
  const nu = poissonRatio.value;
  const bending = (E * thicknessMm * thicknessMm * thicknessMm) / (12 * (1 - nu * nu));
  return {
    shear: (G * thicknessMm * pitchMm) / developedMm,
    upright: (E * thicknessMm * developedMm) / pitchMm,
    along: (bending * pitchMm) / squareOffsets,
  };
}

/** A strip of sheet as wide as the layered mesh; its upright stiffness is the panels' and its other stiffnesses are none. */
function foldSection(fold: Fold, thicknessMm: number): ModelSection {
  const inertia = corrugatedSheet(fold, thicknessMm).iMm4PerMm * FOLD_STRIP_MM;
  return { E, G, A: 0, Iy: inertia, Iz: 0, J: 0 };
}

const FOLD_STRIP_MM = 150;

/** A plate held against turning at both ends: stretched E A/L; bent in its plane 12 E I/L³ and sheared (5/6) G A/L, one after the other. */
function plateStiffness({ widthMm, thicknessMm, lengthMm }: typeof statedTie): ModelAssumptions["tieStiffness"] {
  const area = widthMm * thicknessMm;
  const bent = (E * area * widthMm * widthMm) / (lengthMm * lengthMm * lengthMm);
  const sheared = ((5 / 6) * G * area) / lengthMm;
  return { across: (E * area) / lengthMm, along: 1 / (1 / bent + 1 / sheared) };
}

/** Common practice, no published source: a generic dry container, framed with tubes, on seats of post section. */
export const usualAssumptions: ModelAssumptions = {
  sections: {
    post: { E, G, A: 3800, Iy: 7e6, Iz: 7e6, J: 7e6 },
    topRail: lineSection(containerMembers["top side rail"]),
    bottomRail: lineSection(containerMembers["bottom side rail"]),
    bottomRailAtSeat: railAtSeat(containerMembers["bottom side rail"]),
    crossMember: lineSection(containerMembers["cross member"]),
    doorHeader: lineSection(assumedDoorHeader),
    frame: lineSection(frameTube),
    fold: foldSection(folds.side, 1.6),
  },
  shortRail: {
    bottomRail: lineSection(containerMembers["bottom side rail, 20 ft"]),
    bottomRailAtSeat: railAtSeat(containerMembers["bottom side rail, 20 ft"]),
  },
  sideSheet: sheetStiffness(folds.side, 1.6),
  frontSheet: sheetStiffness(folds.end, 2),
  floorShear: 5000, // deliberately weak: joints of boards unverified
  roofShear: 30_000, // deliberately weak: slender pressed sheet, seams unverified
  roofAcross: 400_000,
  bottomRailMm: 90,
  topRailBelowTopMm: 40,
  bearingStiffness: 1e6,
  tieStiffness: plateStiffness(statedTie),
  holds: "locks at play",
  crossMemberSpacingMm: CROSS_MEMBER_SPACING_MM,
};
