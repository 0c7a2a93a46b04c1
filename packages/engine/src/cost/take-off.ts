import type { Beam, Lock, Opening, Pad, Post, PremiumLine, Scheme, Seat, Tie } from "@cornerway/schema";
import { steelDensity } from "../catalog/materials.ts";
import { findSection } from "../catalog/sections/find-section.ts";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import type { Section } from "../catalog/sections/section.ts";
import { analyse } from "../load-path/analysis.ts";
import { assessedBearings } from "../load-path/assessed-bearings.ts";

/** Quantities of one element, before money. */
export type TakeOff = Omit<PremiumLine, "money">;
export type NotKnown = { readonly elementId: string; readonly section: string };
export type TakenOff = { readonly lines: readonly TakeOff[]; readonly notKnown: readonly NotKnown[] };

/**
 * Everything a scheme needs beyond the same containers stacked plainly on pads at their corners: metres of cut and weld,
 * kilograms by section, pieces, lifts and hours. Plates that are not drawn are the stated ones below.
 */
export function takeOff(scheme: Scheme): TakenOff {
  const plain = plainPads(scheme);
  const each = [
    ...scheme.openings.map(openingTakeOff),
    ...scheme.posts.map(postTakeOff),
    ...scheme.beams.map(beamTakeOff),
    ...scheme.seats.map(seatTakeOff),
    ...scheme.ties.map(tieTakeOff),
    ...scheme.locks.map(lockTakeOff),
    ...scheme.pads.filter(({ id }) => !plain.has(id)).map(padTakeOff),
  ];
  return { lines: each.flatMap(({ lines }) => lines), notKnown: each.flatMap(({ notKnown }) => notKnown) };
}

/** Common practice, no published source: plates of a joint that is not drawn in detail. */
const postPlateMm = { long: 200, wide: 200, thick: 12 };
const tiePlateMm = { long: 300, wide: 150, thick: 12 };
const jointPlateMm = { long: 150, wide: 100, thick: 12 };
const steelKgPerMm3 = steelDensity.valueKgPerM3 / 1e9;

/** Pads that carry a corner of a container: a plain stack has them too. */
function plainPads(scheme: Scheme): ReadonlySet<string> {
  const bearings = assessedBearings(analyse(scheme));
  return new Set(
    bearings.flatMap(({ on, fitting, onElementId }) =>
      on === "pad" && fitting !== undefined && onElementId !== undefined ? [onElementId] : [],
    ),
  );
}

function openingTakeOff(opening: Opening): TakenOff {
  const { id, containerId, widthUm, heightUm, framed, cut } = opening;
  const where = cut === undefined ? "shop" : "site";
  const line = lineOf(id, containerId, where);
  const [widthM, heightM] = [widthUm / 1e6, heightUm / 1e6];
  const roundM = 2 * (widthM + heightM);
  const cutLines = [line("cut", roundM, "m"), line("paint repair", roundM, "m"), line("engineering", 1, "each")];
  if (!framed) return { lines: cutLines, notKnown: [] };
  const frame = openingFrame(opening);
  const bars = [
    { section: frame.jamb, lengthM: 2 * heightM },
    { section: frame.header, lengthM: widthM },
    { section: frame.sill, lengthM: widthM },
  ];
  // the sheet is welded to the frame all round from one side, and the bars to each other at four corners
  const weldM = roundM + 4 * (aroundMm(frame.jamb) / 1000);
  const steel = bars.map(({ section, lengthM }) => steelLine(line, section.name, lengthM * kgPerM(section)));
  return { lines: [...cutLines, line("weld of 5 mm", weldM, "m"), ...merged(steel)], notKnown: [] };
}

function postTakeOff({ id, section, baseZUm, topZUm }: Post): TakenOff {
  return barTakeOff({ id, section, lengthM: (topZUm - baseZUm) / 1e6, plates: 2 });
}

function beamTakeOff({ id, section, from, to }: Beam): TakenOff {
  const [dx, dy, dz] = [to.xUm - from.xUm, to.yUm - from.yUm, to.zUm - from.zUm];
  return barTakeOff({ id, section, lengthM: Math.sqrt(dx * dx + dy * dy + dz * dz) / 1e6, plates: 0 });
}

type Bar = { id: string; section: string; lengthM: number; plates: number };

/** A bar set on site: its steel, plates welded on in the shop, both ends welded on site. */
function barTakeOff({ id, section: name, lengthM, plates }: Bar): TakenOff {
  const line = lineOf(id, null, "site");
  const section = findSection(name);
  const rest = [line("crane lift", 1, "each"), line("engineering", 1, "each")];
  if (section === undefined) return { lines: rest, notKnown: [{ elementId: id, section: name }] };
  const steel = [
    steelLine(line, section.name, lengthM * kgPerM(section)),
    ...(plates > 0 ? [steelLine(line, "plate", plates * plateKg(postPlateMm))] : []),
  ];
  return { lines: [...steel, line("weld of 5 mm", (2 * aroundMm(section)) / 1000, "m"), ...rest], notKnown: [] };
}

function seatTakeOff({ id, upperId, lengthUm, widthUm, packingUm, heldDown }: Seat): TakenOff {
  const line = lineOf(id, upperId, "site");
  const plate = { long: lengthUm / 1000, wide: widthUm / 1000, thick: packingUm / 1000 };
  const alongM = (2 * plate.long) / 1000;
  const roundM = (2 * (plate.long + plate.wide)) / 1000;
  // welded along to what it lies on; held down, all round to what stands on it as well
  const weldM = alongM + (heldDown ? roundM : 0);
  return known([
    steelLine(line, "plate", plateKg(plate)),
    line("weld of 5 mm", weldM, "m"),
    line("engineering", 1, "each"),
  ]);
}

function tieTakeOff({ id }: Tie): TakenOff {
  const line = lineOf(id, null, "site");
  return known([
    steelLine(line, "plate", plateKg(tiePlateMm)),
    line("weld of 5 mm", roundPlateM(tiePlateMm), "m"),
    line("engineering", 1, "each"),
  ]);
}

function lockTakeOff({ id, containerId, kind }: Lock): TakenOff {
  const line = lineOf(id, containerId, "site");
  switch (kind) {
    case "lock":
      return known([line("lock", 1, "each")]);
    case "hold-down":
      return known([line("anchor", 2, "each"), line("engineering", 1, "each")]);
    case "made connection":
      return known([
        steelLine(line, "plate", 2 * plateKg(jointPlateMm)),
        line("weld of 5 mm", 2 * roundPlateM(jointPlateMm), "m"),
        line("engineering", 1, "each"),
      ]);
  }
}

const padTakeOff = ({ id }: Pad): TakenOff => known([lineOf(id, null, "site")("pad", 1, "each")]);

const known = (lines: readonly TakeOff[]): TakenOff => ({ lines, notKnown: [] });

type Line = (item: TakeOff["item"], quantity: number, unit: TakeOff["unit"]) => TakeOff;

const lineOf =
  (elementId: string, containerId: string | null, where: TakeOff["where"]): Line =>
  (item, quantity, unit) => ({ elementId, containerId, item, section: null, quantity, unit, where });

const steelLine = (line: Line, section: string, kg: number): TakeOff => ({ ...line("steel", kg, "kg"), section });

/** One line for each section. */
function merged(lines: readonly TakeOff[]): TakeOff[] {
  const bySection = new Map<string | null, TakeOff>();
  for (const line of lines) {
    const before = bySection.get(line.section);
    bySection.set(line.section, { ...line, quantity: line.quantity + (before?.quantity ?? 0) });
  }
  return [...bySection.values()];
}

type PlateMm = { long: number; wide: number; thick: number };
const plateKg = ({ long, wide, thick }: PlateMm) => long * wide * thick * steelKgPerMm3;
const roundPlateM = ({ long, wide }: PlateMm) => (2 * (long + wide)) / 1000;

const kgPerM = ({ areaMm2 }: Section) => areaMm2 * 1000 * steelKgPerMm3;

/** Outline to weld round at an end, mm. */
function aroundMm(section: Section): number {
  switch (section.kind) {
    case "tube":
      return 2 * (section.depthMm + section.widthMm);
    case "I":
      return 2 * section.depthMm + 4 * section.flangeWidthMm;
    case "channel":
      return 2 * section.depthMm + 4 * section.flangeWidthMm;
    case "angle":
      return 4 * section.legMm;
    case "pressed":
      return (2 * section.areaMm2) / section.thicknessMm;
  }
}
