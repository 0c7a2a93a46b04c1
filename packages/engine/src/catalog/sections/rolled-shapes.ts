import { mm2PerInch2, mm3PerInch3, mm4PerInch4, mm6PerInch6, mmPerInch } from "./inch.ts";
import type { AngleSection, ChannelSection, ISection } from "./section.ts";

/** As printed, in inches: A, d, tw, bf, tf, Ix, Sx, rx, Zx, Iy, ry, Zy, J, Cw; k where a source gives it. */
type PrintedI = readonly [
  name: string,
  area: number,
  depth: number,
  web: number,
  width: number,
  flange: number,
  ix: number,
  sx: number,
  rx: number,
  zx: number,
  iy: number,
  ry: number,
  zy: number,
  j: number,
  cw: number,
  k?: number,
];

const printedI: readonly PrintedI[] = [
  ["W6x15", 4.43, 5.99, 0.23, 5.99, 0.26, 29.1, 9.72, 2.56, 10.8, 9.32, 1.45, 4.75, 0.101, 76.5],
  ["W6x25", 7.34, 6.38, 0.32, 6.08, 0.455, 53.4, 16.7, 2.7, 18.9, 17.1, 1.52, 8.56, 0.461, 150],
  ["W8x18", 5.26, 8.14, 0.23, 5.25, 0.33, 61.9, 15.2, 3.43, 17, 7.97, 1.23, 4.66, 0.172, 122],
  ["W8x24", 7.08, 7.93, 0.245, 6.5, 0.4, 82.7, 20.9, 3.42, 23.1, 18.3, 1.61, 8.57, 0.346, 259],
  ["W8x31", 9.13, 8, 0.285, 8, 0.435, 110, 27.5, 3.47, 30.4, 37.1, 2.02, 14.1, 0.536, 530, 0.829],
  ["W10x22", 6.49, 10.2, 0.24, 5.75, 0.36, 118, 23.2, 4.27, 26, 11.4, 1.33, 6.1, 0.239, 275],
  ["W10x33", 9.71, 9.73, 0.29, 7.96, 0.435, 171, 35, 4.19, 38.8, 36.6, 1.94, 14, 0.583, 791],
  ["W12x26", 7.65, 12.2, 0.23, 6.49, 0.38, 204, 33.4, 5.17, 37.2, 17.3, 1.51, 8.17, 0.3, 607],
  ["W14x22", 6.49, 13.7, 0.23, 5, 0.335, 199, 29, 5.54, 33.2, 7, 1.04, 4.39, 0.208, 314],
  ["W18x50", 14.7, 18, 0.355, 7.5, 0.57, 800, 88.9, 7.38, 101, 40.1, 1.65, 16.6, 1.24, 3040],
];

const tables = { source: "AISC Manual, tables of shapes", certainty: "memory" } as const;

/** Rolled I shapes as the shape tables of the AISC Manual print them. */
export const rolledIShapes: readonly ISection[] = printedI.map(
  ([name, area, depth, web, width, flange, ix, sx, rx, zx, iy, ry, zy, j, cw, k]) => ({
    kind: "I",
    name,
    areaMm2: area * mm2PerInch2,
    depthMm: depth * mmPerInch,
    webMm: web * mmPerInch,
    flangeWidthMm: width * mmPerInch,
    flangeMm: flange * mmPerInch,
    ...(k === undefined ? {} : { kMm: k * mmPerInch }),
    ixMm4: ix * mm4PerInch4,
    sxMm3: sx * mm3PerInch3,
    rxMm: rx * mmPerInch,
    zxMm3: zx * mm3PerInch3,
    iyMm4: iy * mm4PerInch4,
    syMm3: (iy / (width / 2)) * mm3PerInch3,
    ryMm: ry * mmPerInch,
    zyMm3: zy * mm3PerInch3,
    jMm4: j * mm4PerInch4,
    cwMm6: cw * mm6PerInch6,
    ...tables,
  }),
);

/** As printed, in inches: d, tw, bf, tf, A, Ix, Sx, Zx, Iy, ry, x̄, J, Cw. */
type PrintedChannel = readonly [
  name: string,
  depth: number,
  web: number,
  width: number,
  flange: number,
  area: number,
  ix: number,
  sx: number,
  zx: number,
  iy: number,
  ry: number,
  back: number,
  j: number,
  cw: number,
];

const printedChannels: readonly PrintedChannel[] = [
  ["C6x8.2", 6, 0.2, 1.92, 0.343, 2.39, 13.1, 4.35, 5.16, 0.687, 0.536, 0.512, 0.074, 4.7],
  ["C8x11.5", 8, 0.22, 2.26, 0.39, 3.37, 32.5, 8.14, 9.63, 1.31, 0.623, 0.572, 0.13, 16.5],
  ["C10x15.3", 10, 0.24, 2.6, 0.436, 4.48, 67.3, 13.5, 15.9, 2.27, 0.711, 0.634, 0.209, 45.5],
];

/** Rolled channels. Weak-axis Z is not printed here; the elastic modulus to the flange tips stands in, on the safe side. */
export const rolledChannels: readonly ChannelSection[] = printedChannels.map(
  ([name, depth, web, width, flange, area, ix, sx, zx, iy, ry, back, j, cw]) => {
    const syMm3 = (iy / (width - back)) * mm3PerInch3;
    return {
      kind: "channel",
      name,
      depthMm: depth * mmPerInch,
      webMm: web * mmPerInch,
      flangeWidthMm: width * mmPerInch,
      flangeMm: flange * mmPerInch,
      areaMm2: area * mm2PerInch2,
      ixMm4: ix * mm4PerInch4,
      sxMm3: sx * mm3PerInch3,
      zxMm3: zx * mm3PerInch3,
      rxMm: Math.sqrt(ix / area) * mmPerInch,
      iyMm4: iy * mm4PerInch4,
      syMm3,
      zyMm3: syMm3,
      ryMm: ry * mmPerInch,
      centroidFromBackMm: back * mmPerInch,
      jMm4: j * mm4PerInch4,
      cwMm6: cw * mm6PerInch6,
      ...tables,
    };
  },
);

type PrintedAngle = readonly [
  name: string,
  leg: number,
  thickness: number,
  area: number,
  i: number,
  s: number,
  r: number,
  rz: number,
];

const printedAngles: readonly PrintedAngle[] = [
  ["L3x3x1/4", 3, 0.25, 1.44, 1.23, 0.569, 0.926, 0.585],
  ["L4x4x1/4", 4, 0.25, 1.93, 3, 1.03, 1.25, 0.783],
  ["L4x4x3/8", 4, 0.375, 2.86, 4.32, 1.5, 1.23, 0.779],
];

/** Equal-leg angles. */
export const rolledAngles: readonly AngleSection[] = printedAngles.map(([name, leg, thickness, area, i, s, r, rz]) => ({
  kind: "angle",
  name,
  legMm: leg * mmPerInch,
  thicknessMm: thickness * mmPerInch,
  areaMm2: area * mm2PerInch2,
  iMm4: i * mm4PerInch4,
  sMm3: s * mm3PerInch3,
  rMm: r * mmPerInch,
  rzMm: rz * mmPerInch,
  ...tables,
}));
