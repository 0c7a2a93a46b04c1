import type { EndName, SideName, TiedRail, UnitLines, WallName } from "./unit-lines.ts";
import { wallGrid, type WallGrid } from "./wall-grid.ts";

/** The meshes of a container's walls, and the stations of its open door end. */
export interface UnitGrids extends Record<WallName, WallGrid> {
  readonly doorColumns: readonly number[];
}

export function unitGrids(lines: UnitLines): UnitGrids {
  return {
    left: sideGrid(lines, "left"),
    right: sideGrid(lines, "right"),
    front: frontGrid(lines),
    doorColumns: [
      ...new Set([0, lines.widthMm, ...endStations(lines), ...endSeats(lines, "door"), ...tiedAt(lines, "door")]),
    ].sort((a, b) => a - b),
  };
}

/** Strips across the front wall and along the end rails. */
const END_STRIPS = 6;

function sideGrid(lines: UnitLines, side: SideName): WallGrid {
  const { lengthMm, floorBays } = lines;
  const posts = lines.posts.filter((post) => post.side === side);
  const tied = tiedRails(lines, side);
  const bearing = [
    ...lines.seats.filter((seat) => seat.side === side),
    ...posts.filter(({ footed }) => footed),
    ...tied.filter(({ upright }) => upright),
  ];
  // what stands off the corners comes first, so that a cross member beside it joins its line and not the other way round
  const stations = [
    ...bearing.map(({ u }) => u),
    ...posts.map(({ u }) => u),
    ...tied.map(({ u }) => u),
    ...Array.from({ length: floorBays - 1 }, (_, n) => (lengthMm * (n + 1)) / floorBays),
  ];
  const offCorners = sheeted(lines, side) ? bearing.map(({ u }) => u) : [];
  return wallGrid({ ...wallShape(lines, side, lengthMm), stations, offCorners });
}

function sheeted({ lengthMm, openings }: UnitLines, side: SideName): boolean {
  return !openings.some((cut) => cut.wall === side && cut.fullHeight && cut.u0 <= 0 && cut.u1 >= lengthMm);
}

function frontGrid(lines: UnitLines): WallGrid {
  const upright = tiedRails(lines, "front").filter((one) => one.upright);
  const offCorners = [...endSeats(lines, "front"), ...upright.map(({ u }) => u)];
  const stations = [...tiedAt(lines, "front"), ...endStations(lines)];
  return wallGrid({ ...wallShape(lines, "front", lines.widthMm), stations, offCorners });
}

function endStations({ widthMm }: UnitLines): number[] {
  return Array.from({ length: END_STRIPS - 1 }, (_, n) => (widthMm * (n + 1)) / END_STRIPS);
}

function endSeats({ seats }: UnitLines, end: EndName): number[] {
  return seats.filter(({ side }) => side === end).map(({ u }) => u);
}

const tiedRails = ({ ties = [] }: UnitLines, side: SideName | EndName): TiedRail[] =>
  ties.flatMap((tied) => ("rail" in tied && tied.side === side ? [tied] : []));

const tiedAt = (lines: UnitLines, end: EndName): number[] => tiedRails(lines, end).map(({ u }) => u);

function wallShape({ bottomRailMm, topRailMm, openings }: UnitLines, wall: WallName, lengthMm: number) {
  return { lengthMm, bottomMm: bottomRailMm, topMm: topRailMm, cuts: openings.filter((cut) => cut.wall === wall) };
}
