import type { Working } from "../working/working.ts";
import type { Enclosure, WindDirection } from "./wind-shape.ts";

/** Pressure on one band of height or of distance from the windward edge, Pa, positive towards the surface. */
export type PressureBand = {
  readonly fromMm: number;
  readonly toMm: number;
  readonly pressurePa: number;
};

/** A roof band has two values: the strongest suction and the weakest one (or a pressure). */
export type RoofBand = {
  readonly fromMm: number;
  readonly toMm: number;
  readonly mostPa: number;
  readonly leastPa: number;
};

/** External pressures while the wind blows in one direction. */
export type DirectionalPressures = {
  readonly direction: WindDirection;
  readonly windward: readonly PressureBand[];
  readonly leewardPa: number;
  readonly sidePa: number;
  readonly roof: readonly RoofBand[];
  /** Under a part that overhangs: upwards where the wind meets it. */
  readonly soffitPa: number;
  readonly workings: readonly Working[];
};

/** What the main system has to carry. Internal pressure is positive outwards on every wall and on the roof. */
export type MainSystemWind = {
  readonly directions: readonly DirectionalPressures[];
  readonly enclosure: EnclosureFinding;
  readonly internalPa: number;
  readonly internal: Working;
  /** Least horizontal pressure on the projected wall, Pa. */
  readonly leastPa: number;
};

/**
 * The class of an envelope, and of the same one with its doors open; the worse of the two sets the internal pressure.
 */
export type EnclosureFinding = {
  readonly closed: Enclosure;
  readonly doorsOpen: Enclosure;
  readonly governing: Enclosure;
  readonly coefficient: number;
  readonly workings: readonly Working[];
};

/** Which share of the pressures of each axis acts at once, and how far off the centre, in parts of the face's width. */
export type WindLoadCase = {
  readonly id: string;
  readonly x: { readonly direction: WindDirection; readonly factor: number; readonly eccentricity: number } | undefined;
  readonly y: { readonly direction: WindDirection; readonly factor: number; readonly eccentricity: number } | undefined;
};

/** A part of the skin with its own design pressure. */
export type CladdingPart = {
  readonly surface: "wall" | "roof" | "soffit";
  readonly zone: CladdingZone;
  readonly effectiveAreaM2: number;
};
export type CladdingZone = "middle" | "edge" | "corner" | "inner";

/** Widths of the strips in which components take more, mm from the edges of walls and roofs. */
export type CladdingZoneWidths = {
  readonly wallEdgeMm: number;
  readonly roofEdgeMm: number;
  readonly roofMiddleMm: number;
};

/** Strength-level pressures of a part of the skin, Pa, both positive numbers. */
export type CladdingPressure = {
  readonly inwardPa: number;
  readonly outwardPa: number;
  readonly workings: readonly Working[];
};
