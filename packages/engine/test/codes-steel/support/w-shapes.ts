import type { ISection } from "../../../src/catalog/sections/section.ts";
import { inch } from "./us-units.ts";

/** I shapes of the worked cases that the catalogue does not carry. Tables of shapes, from memory; inches as printed. */
type Printed = Record<
  "a" | "d" | "tw" | "bf" | "tf" | "ix" | "sx" | "rx" | "zx" | "iy" | "sy" | "ry" | "zy" | "j" | "cw",
  number
>;

const shape = (name: string, p: Printed): ISection => ({
  kind: "I",
  name,
  source: "AISC Manual, tables of shapes",
  certainty: "memory",
  areaMm2: p.a * inch ** 2,
  depthMm: p.d * inch,
  webMm: p.tw * inch,
  flangeWidthMm: p.bf * inch,
  flangeMm: p.tf * inch,
  ixMm4: p.ix * inch ** 4,
  sxMm3: p.sx * inch ** 3,
  rxMm: p.rx * inch,
  zxMm3: p.zx * inch ** 3,
  iyMm4: p.iy * inch ** 4,
  syMm3: p.sy * inch ** 3,
  ryMm: p.ry * inch,
  zyMm3: p.zy * inch ** 3,
  jMm4: p.j * inch ** 4,
  cwMm6: p.cw * inch ** 6,
});

export const w14x132 = shape("W14x132", {
  a: 38.8,
  d: 14.7,
  tw: 0.645,
  bf: 14.7,
  tf: 1.03,
  ix: 1530,
  sx: 209,
  rx: 6.28,
  zx: 234,
  iy: 548,
  sy: 74.5,
  ry: 3.76,
  zy: 113,
  j: 12.3,
  cw: 25500,
});
export const w14x68 = shape("W14x68", {
  a: 20,
  d: 14,
  tw: 0.415,
  bf: 10,
  tf: 0.72,
  ix: 722,
  sx: 103,
  rx: 6.01,
  zx: 115,
  iy: 121,
  sy: 24.2,
  ry: 2.46,
  zy: 36.9,
  j: 3.01,
  cw: 5380,
});
export const w14x99 = shape("W14x99", {
  a: 29.1,
  d: 14.2,
  tw: 0.485,
  bf: 14.6,
  tf: 0.78,
  ix: 1110,
  sx: 157,
  rx: 6.17,
  zx: 173,
  iy: 402,
  sy: 55.2,
  ry: 3.71,
  zy: 83.6,
  j: 5.37,
  cw: 18000,
});
