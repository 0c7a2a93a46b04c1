import type { Opening } from "@cornerway/schema";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import { kgPerM } from "./steel-mass.ts";
import { known, lineOf, steelLine, type TakenOff, type TakeOff } from "./take-off-line.ts";
import { roundEndM } from "./weld-length.ts";

/** A cut sheet: cut and painted all round; framed, its bars and their welds. In the yard unless cut after placing. */
export function openingTakeOff(opening: Opening): TakenOff {
  const { id, containerId, widthUm, heightUm, framed, cut } = opening;
  const line = lineOf(id, containerId, cut === undefined ? "shop" : "site");
  const [widthM, heightM] = [widthUm / 1e6, heightUm / 1e6];
  const roundM = 2 * (widthM + heightM);
  const cutLines = [line("cut", roundM, "m"), line("paint repair", roundM, "m"), line("engineering", 1, "each")];
  if (!framed) return known(cutLines);
  const frame = openingFrame(opening);
  const bars = [
    { section: frame.jamb, lengthM: 2 * heightM },
    { section: frame.header, lengthM: widthM },
    { section: frame.sill, lengthM: widthM },
  ];
  // the sheet is welded to the frame all round from one side, and the bars to each other at four corners
  const weldM = roundM + 4 * roundEndM(frame.jamb);
  const steel = bars.map(({ section, lengthM }) => steelLine(line, section.name, lengthM * kgPerM(section)));
  return known([...cutLines, line("weld of 5 mm", weldM, "m"), ...merged(steel)]);
}

/** One line for each section. */
function merged(lines: readonly TakeOff[]): TakeOff[] {
  const bySection = new Map<string | null, TakeOff>();
  for (const line of lines) {
    const before = bySection.get(line.section);
    bySection.set(line.section, { ...line, quantity: line.quantity + (before?.quantity ?? 0) });
  }
  return [...bySection.values()];
}
