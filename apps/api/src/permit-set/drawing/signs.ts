import { pt, type Ink, type Tone } from "../paper/ink.ts";
import { barLengthMm, type View } from "../paper/view.ts";
import { box, circleD, path, polygonD, rule, text, type At } from "../paper/shapes.ts";
import { widthOf } from "../paper/typefaces.ts";
import type { UnitSystem } from "@cornerway/schema";
import { written } from "../written.ts";

/** The bubble of a grid line. */
export const gridBubble = (at: At, label: string): Ink[] => [
  path(circleD(at, 7.5), { pen: "edge", fill: "paper" }),
  text(at.x, at.y + 2.9, label, { size: 8.5, face: "lettering strong", anchor: "middle" }),
];

/** Tag of an opening, post, jamb, beam, seat, tie or pad: a hexagon as wide as its word. */
export function hexTag(at: At, label: string, tone: Tone = "ink"): Ink[] {
  const half = widthOf(label, "lettering strong", 7.5) / 2 + 2;
  const points = [
    { x: at.x - half - 4, y: at.y },
    { x: at.x - half, y: at.y - 5.6 },
    { x: at.x + half, y: at.y - 5.6 },
    { x: at.x + half + 4, y: at.y },
    { x: at.x + half, y: at.y + 5.6 },
    { x: at.x - half, y: at.y + 5.6 },
  ];
  return [
    path(polygonD(points), { pen: "edge", tone, fill: "paper" }),
    text(at.x, at.y + 2.6, label, { size: 7.5, face: "lettering strong", anchor: "middle", tone }),
  ];
}

/** A word on a drawing with paper behind it. */
export function label(
  at: At,
  words: string,
  { size = 7.5, strong = false, tone = "ink" }: { size?: number; strong?: boolean; tone?: Tone } = {},
): Ink[] {
  const face = strong ? "lettering strong" : "lettering";
  const half = widthOf(words, face, size) / 2 + 1.2;
  return [
    box({ x: pt(at.x - half), y: pt(at.y - size * 0.78), width: half * 2, height: size * 1.02 }, { fill: "paper" }),
    text(at.x, at.y, words, { size, face, tone, anchor: "middle" }),
  ];
}

/** The title under a view: its number, name and scale, with the rule under it. */
export function viewTitle(at: At, number: number, name: string, scale: string, width = 220): Ink[] {
  const letters = { size: 9.5, tracking: 0.7 };
  const wide = widthOf(name.toUpperCase(), "lettering", letters.size, letters.tracking);
  const least = 7;
  const fits =
    wide <= width - 24 ? letters : { size: Math.max(least, (letters.size * (width - 24)) / wide), tracking: 0.2 };
  return [
    path(circleD({ x: at.x + 9, y: at.y }, 9), { pen: "edge", fill: "paper" }),
    text(at.x + 9, at.y + 3.2, String(number), { size: 9, face: "lettering strong", anchor: "middle" }),
    text(at.x + 24, at.y - 3, name.toUpperCase(), fits),
    rule(at.x + 24, at.x + width, at.y + 1, "profile"),
    text(at.x + 24, at.y + 10, scale, { size: 7.5, tone: "graphite" }),
  ];
}

/** The bar that tells whether a print is true to its scale; shorter by whole pairs of steps where there is less room, pt. */
export function scaleBar(at: At, view: View, units: UnitSystem, room = Infinity): Ink[] {
  const { step, steps: usual } = barLengthMm(view, units);
  const pairs = Math.floor(room / view.length(step) / 2);
  const steps = Math.max(2, Math.min(usual, 2 * pairs));
  const one = view.length(step);
  const say = written[units];
  const pieces = Array.from({ length: steps }, (_, index) =>
    box(
      { x: at.x + index * one, y: at.y, width: one, height: 3 },
      { pen: "fine", fill: index % 2 === 0 ? "ink" : "paper" },
    ),
  );
  const figures = Array.from({ length: steps / 2 + 1 }, (_, index) =>
    text(at.x + index * 2 * one, at.y - 2.5, shortLength(index * 2 * step, units), { size: 7, anchor: "middle" }),
  );
  return [
    ...pieces,
    ...figures,
    text(at.x + steps * one + 5, at.y + 3, say.lengthUnit === "m" ? "m" : "ft", { size: 7 }),
  ];
}

const shortLength = (mm: number, units: UnitSystem): string =>
  String(Math.round(units === "US" ? mm / 304.8 : mm / 1000));

/** The half-filled triangle of a level with its name and height. */
export const levelMark = (at: At, name: string, level: string): Ink[] => [
  path(polygonD([at, { x: at.x - 4, y: at.y - 6 }, { x: at.x + 4, y: at.y - 6 }]), { pen: "fine", fill: "paper" }),
  path(polygonD([at, { x: at.x, y: at.y - 6 }, { x: at.x + 4, y: at.y - 6 }]), { fill: "ink" }),
  text(at.x - 7, at.y - 7.5, name, { size: 7.5, anchor: "end", face: "lettering strong" }),
  text(at.x - 7, at.y - 0.2, level, { size: 7.5, anchor: "end" }),
];

/** The arrow to true north; `turnMdeg` anticlockwise from up. */
export function northArrow(at: At, cos: number, sin: number): Ink[] {
  const turned = (dx: number, dy: number): At => ({ x: at.x + dx * cos - dy * sin, y: at.y - (dx * sin + dy * cos) });
  const tip = turned(0, 13);
  return [
    path(circleD(at, 13), { pen: "fine" }),
    path(polygonD([tip, turned(-4.5, -9), turned(0, -6)]), { pen: "fine", fill: "paper" }),
    path(polygonD([tip, turned(4.5, -9), turned(0, -6)]), { pen: "fine", fill: "ink" }),
    text(turned(0, 19).x, turned(0, 19).y + 3, "N", { size: 9, face: "lettering strong", anchor: "middle" }),
  ];
}
