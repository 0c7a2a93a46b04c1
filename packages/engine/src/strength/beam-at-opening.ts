import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube, windowTube } from "../catalog/sections/frame-tubes.ts";
import type { Section } from "../catalog/sections/section.ts";
import { hasBareEdge } from "../model/bare-edges.ts";
import type { UnitLines, UnitOpening } from "../model/unit-lines.ts";
import type { UnitBeam } from "./unit-beams.ts";

/** A sheet edge this near to a rail leaves it on its own. */
const STRIP_MM = 300;

export function openingAt(
  beam: UnitBeam,
  lines: UnitLines,
  rail: "top" | "bottom",
): { readonly name: string; readonly widthMm: number; readonly header?: Section; readonly bare: boolean } | undefined {
  const reaches = (cut: UnitOpening): boolean =>
    rail === "bottom" ? cut.v0 < lines.bottomRailMm + STRIP_MM : cut.v1 > lines.topRailMm - STRIP_MM;
  const cut = lines.openings.find(
    (one) => one.wall === beam.side && one.u0 < beam.uMm && beam.uMm < one.u1 && reaches(one),
  );
  if (cut === undefined) return undefined;
  const [from, to] = betweenPosts(beam, cut, lines);
  const headed = cut.framed && cut.fullHeight;
  return {
    name: `${metres(from)}–${metres(to)} m`,
    widthMm: to - from,
    bare: hasBareEdge(cut, lines.lengthMm),
    ...(headed && { header: sectionNamed(cut.frame.header.name) }),
  };
}

/** The part of an opening the line lies in, between posts that stand on something. */
function betweenPosts(beam: UnitBeam, { u0, u1 }: UnitOpening, { posts }: UnitLines): [number, number] {
  const held = posts.filter(({ side, footed }) => side === beam.side && footed).map(({ u }) => u);
  return [Math.max(u0, ...held.filter((u) => u <= beam.uMm)), Math.min(u1, ...held.filter((u) => u > beam.uMm))];
}

/** Between the jambs of the window a lintel belongs to. */
export function windowWidth(beam: UnitBeam, lines: UnitLines): number {
  const wall = wallOf(beam, lines);
  const along = wall === "front" ? beam.yMm + lines.widthMm / 2 : beam.uMm;
  const cut = lines.openings.find((one) => one.wall === wall && one.u0 < along && along < one.u1 && !one.fullHeight);
  return cut === undefined ? lines.lengthMm : cut.u1 - cut.u0;
}

export function wallOf({ uMm, yMm, side }: UnitBeam, { widthMm }: UnitLines): string {
  const inFront = uMm < 1 && Math.abs(yMm) < widthMm / 2 - 1;
  return inFront ? "front" : side;
}

/** Bars of frames go by the name of their section in the model. */
export const barOf = ({ section }: UnitBeam): Section => sectionNamed(section);
const sectionNamed = (name: string): Section =>
  findSection(name) ?? (name === windowTube.name ? windowTube : frameTube);

export const metres = (mm: number): string => (Math.round(mm / 10) / 100).toFixed(2);
