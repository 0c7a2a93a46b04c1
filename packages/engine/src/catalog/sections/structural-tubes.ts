import { mm2PerInch2, mm3PerInch3, mm4PerInch4, mmPerInch } from "./inch.ts";
import { roundedTube } from "./rounded-tube.ts";
import type { TubeSection } from "./section.ts";

/** As printed, in inches: nominal depth, width, design wall; A, Ix, Sx, rx, Zx; Iy, ry where not square; J. */
type PrintedTube = readonly [
  name: string,
  depth: number,
  width: number,
  wall: number,
  area: number,
  ix: number,
  sx: number,
  rx: number,
  zx: number,
  j: number,
  weak?: readonly [iy: number, ry: number],
];

const printed: readonly PrintedTube[] = [
  ["HSS3x3x3/16", 3, 3, 0.174, 1.89, 2.46, 1.64, 1.14, 1.97, 4.03],
  ["HSS3x3x1/4", 3, 3, 0.233, 2.44, 3.02, 2.01, 1.11, 2.48, 5.08],
  ["HSS4x2x1/4", 4, 2, 0.233, 2.44, 4.49, 2.25, 1.36, 2.94, 3.82, [1.48, 0.779]],
  ["HSS4x3x1/4", 4, 3, 0.233, 2.91, 6.15, 3.07, 1.45, 3.81, 7.96, [3.91, 1.16]],
  ["HSS4x4x1/4", 4, 4, 0.233, 3.37, 7.8, 3.9, 1.52, 4.69, 12.8],
  ["HSS4x4x3/8", 4, 4, 0.349, 4.78, 10.3, 5.13, 1.47, 6.39, 17.5],
  ["HSS4x4x1/2", 4, 4, 0.465, 6.02, 11.9, 5.97, 1.41, 7.7, 21],
  ["HSS5x5x1/4", 5, 5, 0.233, 4.3, 16, 6.41, 1.93, 7.61, 25.8],
  ["HSS5x5x3/8", 5, 5, 0.349, 6.18, 21.7, 8.68, 1.87, 10.6, 36.1],
  ["HSS6x4x1/4", 6, 4, 0.233, 4.3, 20.9, 6.96, 2.2, 8.53, 23.6, [11.1, 1.61]],
  ["HSS6x4x3/8", 6, 4, 0.349, 6.18, 28.3, 9.43, 2.14, 11.9, 32.8, [14.9, 1.55]],
  ["HSS6x6x1/4", 6, 6, 0.233, 5.24, 28.6, 9.54, 2.34, 11.2, 45.6],
  ["HSS6x6x3/8", 6, 6, 0.349, 7.58, 39.5, 13.2, 2.28, 15.8, 64.6],
  ["HSS6x6x1/2", 6, 6, 0.465, 9.74, 48.3, 16.1, 2.23, 19.8, 81.1],
  ["HSS8x4x1/4", 8, 4, 0.233, 5.24, 42.5, 10.6, 2.85, 13.3, 35.3, [14.4, 1.66]],
  ["HSS8x4x3/8", 8, 4, 0.349, 7.58, 58.7, 14.7, 2.78, 18.8, 49.6, [19.6, 1.61]],
  ["HSS8x8x3/8", 8, 8, 0.349, 10.4, 100, 24.9, 3.1, 29.4, 160],
];

/**
 * Structural tubes as the shape tables of the AISC Manual print them (design wall 0.93 of nominal). Weak-axis Z of the
 * rectangular ones is not among the printed columns here and is derived with outside corners of twice the wall.
 */
export const structuralTubes: readonly TubeSection[] = printed.map(
  ([name, depth, width, wall, area, ix, sx, rx, zx, j, weak]) => {
    const [depthMm, widthMm, wallMm] = [depth * mmPerInch, width * mmPerInch, wall * mmPerInch];
    const iy = weak?.[0] ?? ix;
    return {
      kind: "tube",
      made: "structural tube",
      name,
      depthMm,
      widthMm,
      wallMm,
      // AISC 360 B4.1b(d): flat width is the outside less three walls where the corner is not known.
      flatDepthMm: depthMm - 3 * wallMm,
      flatWidthMm: widthMm - 3 * wallMm,
      areaMm2: area * mm2PerInch2,
      ixMm4: ix * mm4PerInch4,
      iyMm4: iy * mm4PerInch4,
      sxMm3: sx * mm3PerInch3,
      syMm3: (iy / (width / 2)) * mm3PerInch3,
      zxMm3: zx * mm3PerInch3,
      zyMm3:
        weak === undefined ? zx * mm3PerInch3 : roundedTube({ depthMm, widthMm, wallMm, cornerMm: 2 * wallMm }).zyMm3,
      rxMm: rx * mmPerInch,
      ryMm: (weak?.[1] ?? rx) * mmPerInch,
      jMm4: j * mm4PerInch4,
      source: "AISC Manual, tables of shapes",
      certainty: "memory",
    };
  },
);
