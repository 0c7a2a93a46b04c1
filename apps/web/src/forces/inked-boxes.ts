import type { BoxPx } from "../drawing/label/place-labels.ts";
import type { ScreenPoint } from "../drawing/view-transform.ts";

/** Ways are told apart to cells of this size, px: lettering keeps off a cell that any of them touches. */
const cellPx = 8;
/** Samples so close that a way misses no more of a cell than its own width, px. */
const samplePx = 2;

/** Boxes that together cover ways on paper: rows of cells, each row of neighbours one box. */
export function inkedBoxes(ways: readonly (readonly ScreenPoint[])[]): BoxPx[] {
  const rows = new Map<number, Set<number>>();
  for (const way of ways)
    for (const { xPx, yPx } of closely(way)) {
      const [column, row] = [Math.floor(xPx / cellPx), Math.floor(yPx / cellPx)];
      const known = rows.get(row);
      if (known === undefined) rows.set(row, new Set([column]));
      else known.add(column);
    }
  return [...rows].flatMap(([row, columns]) =>
    runsOf(columns).map(({ from, to }) => ({
      left: from * cellPx,
      right: (to + 1) * cellPx,
      top: row * cellPx,
      bottom: (row + 1) * cellPx,
    })),
  );
}

/** Points no farther apart than a sample. */
const closely = (way: readonly ScreenPoint[]): ScreenPoint[] =>
  way.flatMap((from, n) => {
    const to = way[n + 1] ?? from;
    const parts = Math.max(1, Math.ceil(Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) / samplePx));
    return Array.from({ length: parts }, (_, part) => ({
      xPx: from.xPx + ((to.xPx - from.xPx) * part) / parts,
      yPx: from.yPx + ((to.yPx - from.yPx) * part) / parts,
    }));
  });

function runsOf(columns: ReadonlySet<number>): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const column of [...columns].toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && last.to + 1 === column) last.to = column;
    else runs.push({ from: column, to: column });
  }
  return runs;
}
