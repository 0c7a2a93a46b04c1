import type { Detail, DetailPart, DetailWeld } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { pt, type Ink } from "../paper/ink.ts";
import { box, boxD, circleD, line, path, polylineD, text, type Box } from "../paper/shapes.ts";
import type { Extent, View } from "../paper/view.ts";
import { written } from "../written.ts";
import { uprightString } from "./dimensions.ts";
import { concrete, diagonals } from "./hatch.ts";

/** What a detail covers, mm about the place it is cut at. */
export function detailExtent({ parts }: Detail): Extent {
  const us = parts.flatMap(({ u0Mm, u1Mm }) => [u0Mm, u1Mm]);
  const zs = parts.flatMap(({ z0Mm, z1Mm }) => [z0Mm, z1Mm]);
  return { u0: Math.min(...us), u1: Math.max(...us), v0: Math.min(...zs), v1: Math.max(...zs) };
}

/** One detail: added steel in paired hatch, the container's own close hatched, plates solid; dimensions at the left, names at the right. */
export function detailInk(detail: Detail, view: View, units: UnitSystem): Ink[] {
  const { u0, u1 } = detailExtent(detail);
  const [left, right] = [view.x(u0), view.x(u1)];
  return [
    ...detail.parts.flatMap((part, at) => partInk(part, rectOf(view, part), view, at + 1)),
    ...detail.welds.flatMap((weld) => weldInk(weld, view, (mm) => written[units].small(mm))),
    ...detail.heights.flatMap(({ fromMm, toMm }, at) =>
      uprightString({ mm: [fromMm, toMm], at: view.y }, left - 14 - at * 14, left - 3, units),
    ),
    ...namesInk(detail, view, right),
  ];
}

const rectOf = (view: View, { u0Mm, u1Mm, z0Mm, z1Mm }: DetailPart): Box => ({
  x: view.x(u0Mm),
  y: view.y(z1Mm),
  width: view.length(u1Mm - u0Mm),
  height: view.length(z1Mm - z0Mm),
});

function partInk({ what, outline }: DetailPart, at: Box, view: View, seed: number): Ink[] {
  if (outline !== undefined)
    return [
      path(`${polylineD(outline.map(({ uMm, zMm }) => ({ x: view.x(uMm), y: view.y(zMm) })))}Z`, { fill: "ink" }),
    ];
  const thin = Math.min(at.width, at.height) < leastHatchedPt;
  switch (what) {
    case "added steel":
      if (thin) return [box(at, { pen: "hair", fill: "ink" })];
      return [box(at, { pen: "edge", fill: "paper" }), path(diagonals(at, 5, 1.4), { pen: "hair" })];
    case "container steel":
      if (thin) return [box(at, { pen: "hair", fill: "ink" })];
      return [box(at, { pen: "profile", fill: "paper" }), path(diagonals(at, 3), { pen: "hair", tone: "pencil" })];
    case "plate":
      return [box(at, { pen: "edge", fill: "ink" })];
    case "anchor":
      return anchorInk(at);
    case "device":
      return [box(at, { pen: "edge", dash: "hidden" })];
    case "concrete": {
      const { dots, triangles } = concrete(at, seed);
      return [
        box(at, { pen: "profile", fill: "paper" }),
        path(dots, { pen: "edge", tone: "graphite" }),
        path(triangles, { pen: "hair", tone: "graphite" }),
      ];
    }
  }
}

/** Steel that is cut thinner than this is inked solid, pt: no hatch is read in it. */
const leastHatchedPt = 6;
const leastAnchorPt = 1.8;

/** A shank with its nut above and its head below. */
function anchorInk({ x, y, width, height }: Box): Ink[] {
  const wide = Math.max(width, leastAnchorPt);
  const middle = x + width / 2;
  const cap = (at: number) => boxD({ x: middle - wide, y: at - wide / 2, width: 2 * wide, height: wide });
  const shank = boxD({ x: middle - wide / 2, y, width: wide, height });
  return [path(shank + cap(y) + cap(y + height), { pen: "edge", fill: "paper" })];
}

/**
 * A fillet weld (AWS A2.4 and ISO 2553, from memory): arrow to its root; its triangle under the line, upright side left, over it
 * as well where the far side has one; its leg before, its length after; a circle at the knee where it runs all round.
 */
function weldInk({ uMm, zMm, legMm, around, bothSides, lengthMm }: DetailWeld, view: View, small: Small): Ink[] {
  const [x, y] = [view.x(uMm), view.y(zMm)];
  const [kneeX, kneeY] = [x + 22, y - 20];
  const sign = kneeX + 29;
  const length = lengthMm === undefined ? [] : [text(sign + 9, kneeY + 7, small(lengthMm), { size: 7 })];
  return [
    path(
      polylineD([
        { x, y },
        { x: kneeX, y: kneeY },
        { x: sign + (lengthMm === undefined ? 11 : 36), y: kneeY },
      ]),
      { pen: "fine" },
    ),
    path(`M${pt(sign)} ${pt(kneeY)}v6l6 -6`, { pen: "fine" }),
    ...(bothSides === true ? [path(`M${pt(sign)} ${pt(kneeY)}v-6l6 6`, { pen: "fine" })] : []),
    ...(around ? [path(circleD({ x: kneeX, y: kneeY }, 2), { pen: "fine", fill: "paper" })] : []),
    path(circleD({ x, y }, 1.1), { fill: "ink" }),
    text(sign - 2, kneeY + 7, small(legMm), { size: 7, anchor: "end" }),
    ...length,
  ];
}

type Small = (mm: number) => string;

/** Names stand this far under one another at least, pt. */
const nameStepPt = 9;

/** What each part is, once for each name, level with it where there is room, with a leader to its edge. */
function namesInk({ parts, welds }: Detail, view: View, right: number): Ink[] {
  const named = [...new Map(parts.map((part) => [part.name, part])).values()]
    .map((part) => ({ part, y: view.y((part.z0Mm + part.z1Mm) / 2) }))
    .toSorted((a, b) => a.y - b.y);
  // A weld's sign stands over its root: names keep below it.
  let last = -Infinity;
  return named.flatMap(({ part, y }) => {
    const clear = welds.some(({ zMm }) => Math.abs(view.y(zMm) - 20 - y) < nameStepPt) ? y + nameStepPt : y;
    const at = Math.max(clear, last + nameStepPt);
    last = at;
    const edge = { x: view.x(part.u1Mm), y };
    return [
      line({ x: right + 16, y: at }, edge, "fine", { tone: "graphite" }),
      path(circleD(edge, 1), { fill: "graphite" }),
      text(right + 18, at + 2.4, part.name, { size: 7 }),
    ];
  });
}
