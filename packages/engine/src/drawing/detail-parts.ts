import { containerMembers } from "../catalog/sections/container-members.ts";
import type { Section } from "../catalog/sections/section.ts";
import { sectionSizeMm } from "../catalog/section-size.ts";
import { toLocal, type PlacedContainer } from "../geometry/place.ts";
import type { PaperRect } from "./corrugation.ts";
import type { DetailPart } from "./detail.ts";

/** A rectangle of so much steel, mm: u from and to, z from and to. */
const rect = (u0Mm: number, u1Mm: number, z0Mm: number, z1Mm: number): PaperRect => ({ u0Mm, u1Mm, z0Mm, z1Mm });

/** The bounds of parts, mm. */
export const boundsOf = (parts: readonly PaperRect[]): PaperRect => ({
  u0Mm: Math.min(...parts.map(({ u0Mm }) => u0Mm)),
  u1Mm: Math.max(...parts.map(({ u1Mm }) => u1Mm)),
  z0Mm: Math.min(...parts.map(({ z0Mm }) => z0Mm)),
  z1Mm: Math.max(...parts.map(({ z1Mm }) => z1Mm)),
});

/** The four walls of a tube cut across. */
const tubeWalls = ({ u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect, wallMm: number): PaperRect[] => [
  rect(u0Mm, u0Mm + wallMm, z0Mm, z1Mm),
  rect(u1Mm - wallMm, u1Mm, z0Mm, z1Mm),
  rect(u0Mm, u1Mm, z0Mm, z0Mm + wallMm),
  rect(u0Mm, u1Mm, z1Mm - wallMm, z1Mm),
];

/** A section of added steel cut across within the room given: the walls of a tube, else the whole of it. */
export function cutAcross(section: Section, room: PaperRect): DetailPart[] {
  const walls = section.kind === "tube" ? tubeWalls(room, section.wallMm) : [room];
  return walls.map((wall) => ({ what: "added steel", name: section.name, ...wall }));
}

/** Outside sizes of a section, mm. */
export const outsideMm = (section: Section): { depthMm: number; widthMm: number } =>
  section.kind === "tube" ? section : sectionSizeMm(section.name);

/** The top side rail cut across, its head at `headMm` and its middle at `atMm`. */
export function topRailCut({ dimensions }: PlacedContainer, headMm: number, atMm = 0): DetailPart[] {
  const { topRailDepthMm, topRailWidthMm } = dimensions;
  const half = topRailWidthMm / 2;
  const room = rect(atMm - half, atMm + half, headMm - topRailDepthMm, headMm);
  return own("top rail", tubeWalls(room, containerMembers["top side rail"].wallMm));
}

/**
 * The bottom side rail of a unit whose fittings stand at `footMm`, cut across with its middle at `atMm`: a pressed channel, its
 * web outside, which is on the left unless it is `turned`.
 */
export function bottomRailCut(
  { dimensions }: PlacedContainer,
  footMm: number,
  { atMm = 0, turned = false }: { readonly atMm?: number; readonly turned?: boolean } = {},
): DetailPart[] {
  const { bottomRailWidthMm: wide, bottomRailDepthMm: deep, baseAboveFittingMm } = dimensions;
  const { thicknessMm: t, footFlangeMm } = bottomRail;
  const low = footMm + baseAboveFittingMm;
  const flange = (longMm: number, z0: number): PaperRect =>
    turned
      ? rect(atMm + wide / 2 - longMm, atMm + wide / 2, z0, z0 + t)
      : rect(atMm - wide / 2, atMm - wide / 2 + longMm, z0, z0 + t);
  const web = turned
    ? rect(atMm + wide / 2 - t, atMm + wide / 2, low, low + deep)
    : rect(atMm - wide / 2, atMm - wide / 2 + t, low, low + deep);
  return own("bottom rail", [web, flange(footFlangeMm, low), flange(wide, low + deep - t)]);
}

const { thicknessMm, outline } = containerMembers["bottom side rail"];
/** Thickness of the generic bottom rail and its narrower flange, from the outside of its web, mm. */
export const bottomRail = { thicknessMm, footFlangeMm: (outline[0]?.xMm ?? 0) + thicknessMm / 2 } as const;

/** A corner fitting with its foot at `footMm`, seen across the unit's side. */
export const fittingPart = ({ dimensions: { fitting } }: PlacedContainer, footMm: number): DetailPart => ({
  ...{ what: "container steel", name: "corner fitting" },
  ...rect(-fitting.lengthMm / 2, fitting.lengthMm / 2, footMm, footMm + fitting.heightMm),
});

/** Whether a place lies within a unit in plan, or no farther outside than `edgeMm`. */
export function isWithin(
  { frame, dimensions: { lengthMm, widthMm } }: PlacedContainer,
  at: { readonly xMm: number; readonly yMm: number },
  edgeMm: number,
): boolean {
  const local = toLocal(frame, { ...at, zMm: 0 });
  return Math.abs(local.xMm) <= lengthMm / 2 + edgeMm && Math.abs(local.yMm) <= widthMm / 2 + edgeMm;
}

export const own = (name: string, rects: readonly PaperRect[]): DetailPart[] =>
  rects.map((each) => ({ what: "container steel", name, ...each }));
