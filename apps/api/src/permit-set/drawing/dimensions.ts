import type { UnitSystem } from "@cornerway/schema";
import { feetAndInches, mmPerInch, sixteenthsPerInch } from "@cornerway/schema";
import { pt, type Ink } from "../paper/ink.ts";
import { path, text } from "../paper/shapes.ts";
import { widthOf } from "../paper/typefaces.ts";
import { written } from "../written.ts";

/** Places along one axis, mm at full size rising, and where each lies on paper. */
export type Chain = { mm: readonly number[]; at: (mm: number) => number };

const size = 7;
const tick = 2.6;

/** A string of dimensions along the page at a height, with slashes; one too narrow for its figure stands above, in turn. */
export function alongString({ mm, at }: Chain, y: number, from: number, units: UnitSystem): Ink[] {
  const places = rising(mm);
  const first = places[0];
  const last = places.at(-1);
  if (first === undefined || last === undefined || places.length < 2) return [];
  const d = places.map(
    (place) =>
      `M${pt(at(place))} ${pt(from)}V${pt(y - 3)}M${pt(at(place) - tick)} ${pt(y + tick)}l${2 * tick} ${-2 * tick}`,
  );
  let raised = false;
  const figures = spans(places, units).map(({ a, b, words }) => {
    const [left, right] = [Math.min(at(a), at(b)), Math.max(at(a), at(b))];
    raised = widthOf(words, "lettering", size) > right - left - 3 ? !raised : false;
    return text((left + right) / 2, y - 2.2 - (raised ? size : 0), words, { size, anchor: "middle" });
  });
  const [x0, x1] = [Math.min(at(first), at(last)), Math.max(at(first), at(last))];
  return [path(`${d.join("")}M${pt(x0 - 4)} ${pt(y)}H${pt(x1 + 4)}`, { pen: "fine", tone: "graphite" }), ...figures];
}

/** The same up the page at a place, its figures turned. */
export function uprightString({ mm, at }: Chain, x: number, from: number, units: UnitSystem): Ink[] {
  const places = rising(mm);
  const first = places[0];
  const last = places.at(-1);
  if (first === undefined || last === undefined || places.length < 2) return [];
  const d = places.map(
    (place) =>
      `M${pt(from)} ${pt(at(place))}H${pt(x - 3)}M${pt(x - tick)} ${pt(at(place) + tick)}l${2 * tick} ${-2 * tick}`,
  );
  let raised = false;
  const figures = spans(places, units).map(({ a, b, words }) => {
    const long = Math.abs(at(a) - at(b));
    raised = widthOf(words, "lettering", size) > long - 3 ? !raised : false;
    return text(x - 2.2 - (raised ? size : 0), (at(a) + at(b)) / 2, words, { size, anchor: "middle", turn: 90 });
  });
  const [y0, y1] = [Math.min(at(first), at(last)), Math.max(at(first), at(last))];
  return [path(`${d.join("")}M${pt(x)} ${pt(y0 - 4)}V${pt(y1 + 4)}`, { pen: "fine", tone: "graphite" }), ...figures];
}

/** Places nearer than a millimetre are one. */
function rising(mm: readonly number[]): number[] {
  const sorted = mm.toSorted((a, b) => a - b);
  return sorted.filter((place, index) => index === 0 || place - (sorted[index - 1] ?? place) > 1);
}

/** Places are rounded to the step they are written in first, so that a string adds up to the overall one. */
function spans(places: readonly number[], units: UnitSystem): { a: number; b: number; words: string }[] {
  const step = units === "US" ? mmPerInch / sixteenthsPerInch : 1;
  const stepped = (mm: number) => Math.round(mm / step);
  return places.slice(1).map((b, index) => {
    const a = places[index] ?? b;
    const mm = (stepped(b) - stepped(a)) * step;
    return { a, b, words: units === "US" ? feetAndInches(mm) : written.SI.length(mm) };
  });
}
