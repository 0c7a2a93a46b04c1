import { planBounds, type PlanBounds, type PlanRect } from "./plan-rect.ts";

/** Finds which of many rectangles may touch a given one, without looking at all of them. */
export type PlanGrid = {
  /** Indices into the list the grid was made from, ascending, of all whose bounds come within `marginMm`. */
  readonly near: (rect: PlanRect, marginMm: number) => number[];
};

/** A grid of square cells over the site; a rectangle is listed in every cell its bounds touch. */
export function planGrid(rects: readonly PlanRect[]): PlanGrid {
  const bounds = rects.map(planBounds);
  const cells = new Map<number, number[]>();
  const everywhere: number[] = [];
  bounds.forEach((box, index) => {
    const keys = cellKeys(box);
    if (keys === undefined) everywhere.push(index);
    else for (const key of keys) listIn(cells, key).push(index);
  });
  return {
    near: (rect, marginMm) => {
      const box = widened(planBounds(rect), marginMm);
      const keys = cellKeys(box);
      const listed = keys === undefined ? rects.map((_, index) => index) : everywhere.slice();
      for (const key of keys ?? []) for (const index of cells.get(key) ?? []) listed.push(index);
      return ascendingOnce(listed).filter((index) => {
        const other = bounds[index];
        return other !== undefined && meet(box, other);
      });
    },
  };
}

const cellMm = 6000;
/** Sites reach ±10 km: fewer than 4096 cells to either side. */
const halfRow = 4096;
/** A slab larger than this is looked at every time instead of being listed in thousands of cells. */
const mostCells = 64;

function cellKeys({ x0, y0, x1, y1 }: PlanBounds): number[] | undefined {
  const left = Math.floor(x0 / cellMm);
  const right = Math.floor(x1 / cellMm);
  const low = Math.floor(y0 / cellMm);
  const high = Math.floor(y1 / cellMm);
  if ((right - left + 1) * (high - low + 1) > mostCells) return undefined;
  const keys: number[] = [];
  for (let x = left; x <= right; x += 1)
    for (let y = low; y <= high; y += 1) keys.push((x + halfRow) * 2 * halfRow + y + halfRow);
  return keys;
}

function listIn(cells: Map<number, number[]>, key: number): number[] {
  const listed = cells.get(key);
  if (listed !== undefined) return listed;
  const fresh: number[] = [];
  cells.set(key, fresh);
  return fresh;
}

const ascendingOnce = (indices: number[]): number[] =>
  indices.sort((a, b) => a - b).filter((index, at) => at === 0 || index !== indices[at - 1]);

const widened = ({ x0, y0, x1, y1 }: PlanBounds, marginMm: number): PlanBounds => ({
  x0: x0 - marginMm,
  y0: y0 - marginMm,
  x1: x1 + marginMm,
  y1: y1 + marginMm,
});

const meet = (a: PlanBounds, b: PlanBounds): boolean => a.x0 <= b.x1 && b.x0 <= a.x1 && a.y0 <= b.y1 && b.y0 <= a.y1;
