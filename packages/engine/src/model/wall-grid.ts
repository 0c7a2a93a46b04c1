import { hasBareEdge } from "./bare-edges.ts";

/** A rectangular cut in a wall: u along the wall from its first post axis, v upwards in the container, mm. */
export interface WallCut {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
  readonly framed: boolean;
  /** From the bottom rail to the top rail. */
  readonly fullHeight: boolean;
}

export interface WallShape {
  readonly lengthMm: number;
  /** Axes of the bottom and the top rail. */
  readonly bottomMm: number;
  readonly topMm: number;
  /** Places where something meets a rail: cross members, posts, seats. */
  readonly stations: readonly number[];
  /** Seats and supports away from the corners, which need the sheet in layers. */
  readonly offCorners: readonly number[];
  readonly cuts: readonly WallCut[];
}

/** Columns and rows of a wall, ascending, and whether a sheet fills the cell after each column and row. */
export interface WallGrid {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  readonly filled: (column: number, row: number) => boolean;
  /** In layers the sheet needs its along-wall stiffness. */
  readonly layered: boolean;
}

/**
 * The mesh of a corrugated wall between two rails: one layer of strips up to about 300 mm where the wall is whole or its
 * framed openings reach from rail to rail; layers and strips of about 150 mm where it has a window or a bare sheet edge, or is
 * loaded off its corners. A bare edge needs its cut as wide as it acts (bare-edges.ts): as drawn it comes out up to 7 % too stiff.
 * Source: comparison with a fold-by-fold shell model (shared/reference/walls.json); test: walls.test.ts.
 */
export function wallGrid(shape: WallShape): WallGrid {
  const windows = shape.cuts.filter(({ fullHeight }) => !fullHeight);
  const layered =
    shape.offCorners.length > 0 || windows.length > 0 || shape.cuts.some((cut) => hasBareEdge(cut, shape.lengthMm));
  const { cuts } = shape;
  const edges = cuts.flatMap(({ u0, u1 }) => [u0, u1]);
  const forced = merged(
    [0, shape.lengthMm],
    [...edges, ...shape.offCorners, ...shape.stations].filter((u) => u > 0 && u < shape.lengthMm),
  );
  const fine = layered ? disturbances(shape) : [];
  const columns = subdivided(forced, (from, to) =>
    fine.some((u) => u > from - FINE_REACH_MM && u < to + FINE_REACH_MM) ? FINE_STRIP_MM : STRIP_MM,
  );
  const rows = layered ? layeredRows(shape, windows) : [shape.bottomMm, shape.topMm];
  const filled = (column: number, row: number): boolean => {
    const u = middle(columns, column);
    const v = middle(rows, row);
    return !cuts.some((cut) => u > cut.u0 && u < cut.u1 && (cut.fullHeight || (v > cut.v0 && v < cut.v1)));
  };
  return { columns, rows, filled, layered };
}

const STRIP_MM = 310;
const FINE_STRIP_MM = 155;
/** How far from an opening's edge, a seat or a support the fine strips go: more than half the height of a container. */
const FINE_REACH_MM = 1500;
const LAYERS = 4;
const WINDOW_LAYER_MM = 700;
/** Lines closer than this are taken as one. */
const SAME_LINE_MM = 0.2;

/** Where the sheet's flow changes over a short way. */
function disturbances({ cuts, offCorners, lengthMm }: WallShape): number[] {
  const edges = cuts.filter((cut) => !cut.fullHeight || hasBareEdge(cut, lengthMm)).flatMap(({ u0, u1 }) => [u0, u1]);
  return [...edges, ...offCorners];
}

function layeredRows({ bottomMm, topMm }: WallShape, windows: readonly WallCut[]): number[] {
  const edges = windows.flatMap(({ v0, v1 }) => [v0, v1]).filter((v) => v > bottomMm && v < topMm);
  const forced = merged([bottomMm, topMm], edges);
  const most = windows.length > 0 ? WINDOW_LAYER_MM : (topMm - bottomMm) / LAYERS + SAME_LINE_MM;
  return subdivided(forced, () => most);
}

/** Sorted, `fixed` kept, others dropped where they fall on a line that is already there. */
function merged(fixed: readonly number[], others: readonly number[]): number[] {
  const lines = [...fixed];
  for (const line of others) if (lines.every((there) => Math.abs(there - line) >= SAME_LINE_MM)) lines.push(line);
  return lines.sort((a, b) => a - b);
}

function subdivided(lines: readonly number[], mostMm: (from: number, to: number) => number): number[] {
  return lines.flatMap((from, n) => {
    const to = lines[n + 1];
    if (to === undefined) return [from];
    const parts = Math.max(1, Math.ceil((to - from) / mostMm(from, to)));
    return Array.from({ length: parts }, (_, k) => from + ((to - from) * k) / parts);
  });
}

function middle(lines: readonly number[], n: number): number {
  return ((lines[n] ?? NaN) + (lines[n + 1] ?? NaN)) / 2;
}
