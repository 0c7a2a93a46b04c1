import type { Grid } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { pt, type Ink } from "../paper/ink.ts";
import { path } from "../paper/shapes.ts";
import type { Extent, View } from "../paper/view.ts";
import { alongString, uprightString } from "./dimensions.ts";
import { gridBubble } from "./signs.ts";

/** Grid lines through the whole plan with bubbles above and to the left, and strings of dimensions below and to the right. */
export function planFrame(whole: Grid, view: View, extent: Extent, units: UnitSystem): Ink[] {
  const grid = within(whole, extent);
  const top = view.y(extent.v1) - 34;
  const foot = view.y(extent.v0) + 16;
  const left = view.x(extent.u0) - 34;
  const right = view.x(extent.u1) + 18;
  const xs = apart(grid.numbers.map(({ atMm }) => view.x(atMm)));
  const ys = apart(grid.letters.map(({ atMm }) => view.y(atMm)));
  const numbers = grid.numbers.flatMap(({ label, atMm }, index) => {
    const [x, at] = [view.x(atMm), xs[index] ?? 0];
    return [
      path(`M${at} ${pt(top + 8)}L${x} ${pt(top + 20)}V${pt(foot)}`, { pen: "hair", dash: "centre", tone: "pencil" }),
      ...gridBubble({ x: at, y: top }, label),
    ];
  });
  const letters = grid.letters.flatMap(({ label, atMm }, index) => {
    const [y, at] = [view.y(atMm), ys[index] ?? 0];
    return [
      path(`M${pt(left + 8)} ${at}L${pt(left + 20)} ${y}H${pt(right)}`, {
        pen: "hair",
        dash: "centre",
        tone: "pencil",
      }),
      ...gridBubble({ x: left, y: at }, label),
    ];
  });
  const us = grid.numbers.map(({ atMm }) => atMm);
  const vs = grid.letters.map(({ atMm }) => atMm);
  const ends = (mm: readonly number[]) => (mm.length > 2 ? [Math.min(...mm), Math.max(...mm)] : []);
  return [
    ...numbers,
    ...letters,
    ...alongString({ mm: us, at: view.x }, foot + 12, foot + 2, units),
    ...alongString({ mm: ends(us), at: view.x }, foot + 30, foot + 14, units),
    ...uprightString({ mm: vs, at: view.y }, right + 14, right + 2, units),
    ...uprightString({ mm: ends(vs), at: view.y }, right + 32, right + 16, units),
  ];
}

/** Lines that pass beside the plan belong to another level. */
const within = ({ numbers, letters }: Grid, { u0, u1, v0, v1 }: Extent): Grid => ({
  numbers: numbers.filter(({ atMm }) => atMm >= u0 - besideMm && atMm <= u1 + besideMm),
  letters: letters.filter(({ atMm }) => atMm >= v0 - besideMm && atMm <= v1 + besideMm),
});

const besideMm = 200;

/** Rising or falling places moved so that bubbles do not touch. */
function apart(places: readonly number[]): number[] {
  const least = 17;
  const order = places.map((place, index) => ({ place, index })).toSorted((a, b) => a.place - b.place);
  let last = -Infinity;
  const moved = order.map(({ place, index }) => {
    last = Math.max(place, last + least);
    return { at: last, index };
  });
  const shift = ((moved.at(-1)?.at ?? 0) - (order.at(-1)?.place ?? 0)) / 2;
  return moved.toSorted((a, b) => a.index - b.index).map(({ at }) => pt(at - shift));
}
