import type { ContainerType, Face } from "@cornerway/schema";
import { containerTypeRows, type ContainerProperty, type ContainerTypeRow } from "./container-types.ts";

/** A rectangle on a face, mm from the face's origin: u along, v up (roof and floor: v from the right side). */
export type FaceRect = { readonly u0: number; readonly u1: number; readonly v0: number; readonly v1: number };

/** A type's dimensions in mm as plain numbers, for drawing and geometry; sources stay with the catalogue rows. */
export type ContainerDimensions = {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly holeSpacingLengthwiseMm: number;
  readonly holeSpacingCrosswiseMm: number;
  /** 0 where fittings stand at the corners only. */
  readonly intermediateHoleSpacingMm: number;
  readonly fitting: { readonly lengthMm: number; readonly widthMm: number; readonly heightMm: number };
  readonly proudOfRoofMm: number;
  readonly baseAboveFittingMm: number;
  readonly topRailDepthMm: number;
  readonly topRailWidthMm: number;
  readonly bottomRailDepthMm: number;
  readonly bottomRailWidthMm: number;
  /** Width of a corner post seen on a long side. */
  readonly cornerPostWidthMm: number;
  readonly frontPostMm: { readonly alongLength: number; readonly alongWidth: number };
  readonly doorPostMm: { readonly alongLength: number; readonly alongWidth: number };
  readonly frontHeaderDepthMm: number;
  readonly doorHeaderDepthMm: number;
  readonly frontSillDepthMm: number;
  readonly doorSillDepthMm: number;
  readonly crossMemberPitchMm: number;
  readonly crossMemberFlangeMm: number;
  readonly sheetThicknessMm: { readonly side: number; readonly end: number; readonly roof: number };
  readonly corrugationPitchMm: { readonly side: number; readonly end: number; readonly roof: number };
  readonly corrugationDepthMm: { readonly side: number; readonly end: number; readonly roof: number };
  readonly tareKg: { readonly least: number; readonly most: number };
  /** Outline of a face. */
  readonly face: (face: Face) => FaceRect;
  /** What lies between the protected members of a face: the sheet, on the door face the door opening. */
  readonly sheetZone: (face: Face) => FaceRect;
};

/** Dimensions of one ISO 668 type, mm. */
export const containerDimensions = (type: ContainerType): ContainerDimensions => dimensions[type];

function dimensionsOf(row: ContainerTypeRow): ContainerDimensions {
  const mm = (property: ContainerProperty) => row[property].value;
  const outlines = byFace((face) => faceOutline(row, face));
  const sheets = byFace((face) => sheetZone(row, face));
  return {
    lengthMm: mm("length"),
    widthMm: mm("width"),
    heightMm: mm("height"),
    holeSpacingLengthwiseMm: mm("holeSpacingLengthwise"),
    holeSpacingCrosswiseMm: mm("holeSpacingCrosswise"),
    intermediateHoleSpacingMm: mm("intermediateHoleSpacing"),
    fitting: { lengthMm: mm("fittingLength"), widthMm: mm("fittingWidth"), heightMm: mm("fittingHeight") },
    proudOfRoofMm: mm("fittingProudOfRoof"),
    baseAboveFittingMm: mm("baseAboveFitting"),
    topRailDepthMm: mm("topSideRailDepth"),
    topRailWidthMm: mm("topSideRailWidth"),
    bottomRailDepthMm: mm("bottomSideRailDepth"),
    bottomRailWidthMm: mm("bottomSideRailWidth"),
    cornerPostWidthMm: mm("frontPostAlongLength"),
    frontPostMm: { alongLength: mm("frontPostAlongLength"), alongWidth: mm("frontPostAlongWidth") },
    doorPostMm: { alongLength: mm("doorPostAlongLength"), alongWidth: mm("doorPostAlongWidth") },
    frontHeaderDepthMm: mm("frontHeaderDepth"),
    doorHeaderDepthMm: mm("doorHeaderDepth"),
    frontSillDepthMm: mm("frontSillDepth"),
    doorSillDepthMm: mm("doorSillDepth"),
    crossMemberPitchMm: mm("crossMemberPitch"),
    crossMemberFlangeMm: mm("crossMemberFlange"),
    sheetThicknessMm: {
      side: mm("sideSheetThickness"),
      end: mm("endSheetThickness"),
      roof: mm("roofSheetThickness"),
    },
    corrugationPitchMm: {
      side: mm("sideCorrugationPitch"),
      end: mm("endCorrugationPitch"),
      roof: mm("roofCorrugationPitch"),
    },
    corrugationDepthMm: {
      side: mm("sideCorrugationDepth"),
      end: mm("endCorrugationDepth"),
      roof: mm("roofCorrugationDepth"),
    },
    tareKg: { least: mm("tareLeast"), most: mm("tareMost") },
    face: (face) => outlines[face],
    sheetZone: (face) => sheets[face],
  };
}

const byFace = (rectOf: (face: Face) => FaceRect): Readonly<Record<Face, FaceRect>> => ({
  left: rectOf("left"),
  right: rectOf("right"),
  front: rectOf("front"),
  door: rectOf("door"),
  roof: rectOf("roof"),
  floor: rectOf("floor"),
});

function faceOutline(row: ContainerTypeRow, face: Face): FaceRect {
  const u1 = face === "front" || face === "door" ? row.width.value : row.length.value;
  const v1 = face === "roof" || face === "floor" ? row.width.value : row.height.value;
  return { u0: 0, u1, v0: 0, v1 };
}

function sheetZone(row: ContainerTypeRow, face: Face): FaceRect {
  const mm = (property: ContainerProperty) => row[property].value;
  const { u1, v1 } = faceOutline(row, face);
  const base = mm("baseAboveFitting");
  const roof = v1 - mm("fittingProudOfRoof");
  switch (face) {
    case "left":
    case "right":
      return {
        u0: mm("frontPostAlongLength"),
        u1: u1 - mm("doorPostAlongLength"),
        v0: base + mm("bottomSideRailDepth"),
        v1: roof - mm("topSideRailDepth"),
      };
    case "front":
      return {
        u0: mm("frontPostAlongWidth"),
        u1: u1 - mm("frontPostAlongWidth"),
        v0: base + mm("frontSillDepth"),
        v1: roof - mm("frontHeaderDepth"),
      };
    case "door":
      return {
        u0: mm("doorPostAlongWidth"),
        u1: u1 - mm("doorPostAlongWidth"),
        v0: base + mm("doorSillDepth"),
        v1: roof - mm("doorHeaderDepth"),
      };
    case "roof":
      return {
        u0: mm("frontHeaderWidth"),
        u1: u1 - mm("doorHeaderWidth"),
        v0: mm("topSideRailWidth"),
        v1: v1 - mm("topSideRailWidth"),
      };
    case "floor":
      return {
        u0: mm("frontSillWidth"),
        u1: u1 - mm("doorSillWidth"),
        v0: mm("bottomSideRailWidth"),
        v1: v1 - mm("bottomSideRailWidth"),
      };
  }
}

const dimensions: Readonly<Record<ContainerType, ContainerDimensions>> = {
  "1EEE": dimensionsOf(containerTypeRows["1EEE"]),
  "1EE": dimensionsOf(containerTypeRows["1EE"]),
  "1AAA": dimensionsOf(containerTypeRows["1AAA"]),
  "1AA": dimensionsOf(containerTypeRows["1AA"]),
  "1A": dimensionsOf(containerTypeRows["1A"]),
  "1BBB": dimensionsOf(containerTypeRows["1BBB"]),
  "1BB": dimensionsOf(containerTypeRows["1BB"]),
  "1CCC": dimensionsOf(containerTypeRows["1CCC"]),
  "1CC": dimensionsOf(containerTypeRows["1CC"]),
  "1C": dimensionsOf(containerTypeRows["1C"]),
  "1D": dimensionsOf(containerTypeRows["1D"]),
};
