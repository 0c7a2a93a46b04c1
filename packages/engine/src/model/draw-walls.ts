import type { FreedomName } from "./analytical-model.ts";
import type { DrawnSheet } from "./drawn-sheet.ts";
import { nearestLine } from "./nearest-line.ts";
import { inSpaceOf } from "./twist-holds.ts";
import type { UnitDraft } from "./unit-draft.ts";
import type { FrameBar, SideName, UnitOpening, WallName } from "./unit-lines.ts";
import type { WallGrid } from "./wall-grid.ts";

/** Side wall: sheet, rails, frames of openings and added posts. */
export function drawSide(draft: UnitDraft, side: SideName): void {
  const grid = draft.grids[side];
  const at = eachOnce(grid, (column, row) => draft.place(side, grid.columns[column] ?? 0, grid.rows[row] ?? 0));
  drawSheet(draft, grid, at, "sides");
  drawSideRail(draft, side, "bottom");
  drawSideRail(draft, side, "top");
  drawFrames(draft, side, at);
  for (const post of draft.lines.posts.filter((one) => one.side === side)) {
    draft.addChain(
      "addedPost",
      grid.rows.map((z) => draft.place(side, post.u, z)),
      draft.postSection(post.section),
    );
  }
}

/** End: rails, on the front end the sheet with its frames, on the other the doors where they are welded shut. */
export function drawEnd(draft: UnitDraft, end: "front" | "door"): void {
  const { bottomRailMm, topRailMm, widthMm, lengthMm } = draft.lines;
  const columns = end === "front" ? draft.grids.front.columns : draft.grids.doorColumns;
  const x = end === "front" ? -lengthMm / 2 : lengthMm / 2;
  const at = (column: number, z: number): string => draft.book.at(x, (columns[column] ?? 0) - widthMm / 2, z);
  drawEndRail(draft, end, columns, "bottom", (column) => at(column, bottomRailMm));
  drawEndRail(draft, end, columns, "top", (column) => at(column, topRailMm));
  if (end === "door") return drawDoors(draft, columns, at);
  const { front } = draft.grids;
  const cell = eachOnce(front, (column, row) => at(column, front.rows[row] ?? 0));
  drawSheet(draft, front, cell, "front");
  drawFrames(draft, "front", cell);
}

/** Doors welded shut, as strips from sill to header. */
function drawDoors(draft: UnitDraft, columns: readonly number[], at: (column: number, z: number) => string): void {
  const { bottomRailMm, topRailMm, doors } = draft.lines;
  if (doors === null) return;
  columns.slice(1).forEach((_, n) => {
    const [low, high] = [bottomRailMm, topRailMm];
    draft.addPanel("doors", [at(n, low), at(n + 1, low), at(n + 1, high), at(n, high)], {
      of: "doors",
      layered: false,
    });
  });
}

type GridPoint = (column: number, row: number) => string;

/** Each point of a grid is asked for by the four cells round it and by what frames them. */
function eachOnce({ rows }: WallGrid, pointAt: GridPoint): GridPoint {
  const known: string[] = [];
  return (column, row) => (known[column * rows.length + row] ??= pointAt(column, row));
}

const PINNED: readonly FreedomName[] = ["ry"];

function openingsOver(draft: UnitDraft, wall: WallName, u: number): UnitOpening[] {
  return draft.lines.openings.filter((cut) => cut.wall === wall && u > cut.u0 && u < cut.u1);
}

function cuts(rail: "top" | "bottom", opening: UnitOpening): boolean {
  return rail === "top" ? opening.cutsTopRail : opening.cutsBottomRail;
}

function drawSideRail(draft: UnitDraft, side: SideName, rail: "top" | "bottom"): void {
  const { bottomRailMm, topRailMm, widthMm, lengthMm } = draft.lines;
  const { columns } = draft.grids[side];
  const z = rail === "top" ? topRailMm : bottomRailMm;
  columns.slice(1).forEach((to, n) => {
    const from = columns[n] ?? 0;
    const over = openingsOver(draft, side, (from + to) / 2);
    if (over.some((opening) => cuts(rail, opening))) return;
    const ends = [draft.place(side, from, z), draft.place(side, to, z)] as const;
    const middle = (from + to) / 2;
    const twisted = rail === "bottom" && draft.twistHolds.some((hold) => inSpaceOf(hold, side, middle));
    const beam = draft.addBeam(`${rail}Rail`, ...ends, twisted ? "bottomRailAtSeat" : `${rail}Rail`);
    // a header stands side by side with the rail, on the same line: each takes its share
    const headed = rail === "top" ? over.find(({ framed, fullHeight }) => framed && fullHeight) : undefined;
    if (headed) draft.addBeam("header", ...ends, draft.frameSection(headed.frame.header));
    const line = { beam, lengthMm: to - from, x: (from + to) / 2 - lengthMm / 2, y: draft.across(side), z };
    draft.carriers.push({ ...line, face: side, stripMm: draft.wallShare(rail) });
    if (rail === "top") draft.carriers.push({ ...line, face: "roof", stripMm: widthMm / 2 });
  });
}

function drawEndRail(
  draft: UnitDraft,
  end: "front" | "door",
  columns: readonly number[],
  rail: "top" | "bottom",
  at: (column: number) => string,
): void {
  const { bottomRailMm, topRailMm, widthMm, lengthMm, floorBays } = draft.lines;
  const section = end === "door" && rail === "top" && draft.lines.sections.doorHeader ? "doorHeader" : `${rail}Rail`;
  const [x, z] = [end === "front" ? -lengthMm / 2 : lengthMm / 2, rail === "top" ? topRailMm : bottomRailMm];
  columns.slice(1).forEach((to, n) => {
    const from = columns[n] ?? 0;
    const over = end === "front" ? openingsOver(draft, "front", (from + to) / 2) : [];
    if (at(n) === at(n + 1) || over.some((opening) => cuts(rail, opening))) return;
    const beam = draft.addBeam(`${end}End${rail}Rail`, at(n), at(n + 1), section);
    const line = { beam, lengthMm: to - from, x, y: (from + to) / 2 - widthMm / 2, z };
    draft.carriers.push({ ...line, face: end, stripMm: draft.wallShare(rail) });
    if (rail === "bottom") draft.carriers.push({ ...line, face: "floor", stripMm: lengthMm / floorBays / 2 });
  });
}

function drawSheet(draft: UnitDraft, grid: WallGrid, at: GridPoint, of: DrawnSheet["of"]): void {
  const sheet = { of, layered: grid.layered };
  for (let c = 0; c + 1 < grid.columns.length; c++) {
    for (let r = 0; r + 1 < grid.rows.length; r++) {
      if (!grid.filled(c, r)) continue;
      draft.addPanel("sheet", [at(c, r), at(c + 1, r), at(c + 1, r + 1), at(c, r + 1)], sheet);
    }
  }
}

/** Jambs of framed full-height openings; the sides of other frames with the folds that hold them in the wall's plane. */
function drawFrames(draft: UnitDraft, wall: WallName, at: GridPoint): void {
  const { columns, rows } = draft.grids[wall];
  const lastRow = rows.length - 1;
  const upright = (column: number, from: number, to: number): string[] =>
    indices(from, to).map((row) => at(column, row));
  for (const cut of draft.lines.openings.filter((one) => one.wall === wall && one.framed)) {
    const [left, right] = [nearestLine(columns, cut.u0), nearestLine(columns, cut.u1)];
    const jambs = [left, right].filter((column) => column > 0 && column < columns.length - 1);
    const { header, sill } = cut.frame;
    const jamb = draft.frameSection(cut.frame.jamb);
    if (cut.fullHeight) {
      for (const column of jambs) draft.addChain("jamb", upright(column, 0, lastRow), jamb);
      continue;
    }
    const [bottom, top] = [nearestLine(rows, cut.v0), nearestLine(rows, cut.v1)];
    for (const column of jambs) {
      draft.addChain("jamb", upright(column, bottom, top), jamb);
      drawFold(draft, wall, upright(column, 0, bottom));
      drawFold(draft, wall, upright(column, top, lastRow).reverse());
    }
    const across = (row: number, bar: FrameBar): void =>
      draft.addChain(
        "lintel",
        indices(left, right).map((column) => at(column, row)),
        draft.frameSection(bar),
      );
    if (sill !== null) across(bottom, sill);
    if (top < lastRow) across(top, header);
  }
}

/** A strip of sheet from a rail, where it is pinned, to a window frame. */
function drawFold(draft: UnitDraft, wall: WallName, points: readonly string[]): void {
  const up = wall === "front" ? ({ up: [1, 0, 0] } as const) : {};
  points.slice(1).forEach((point, n) => {
    draft.addBeam("fold", points[n] ?? "", point, "fold", { ...up, ...(n === 0 && { rel_i: PINNED }) });
  });
}

function indices(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, n) => from + n);
}
