import {
  cosDegThousandths,
  onWall,
  project,
  sectionSizeMm,
  sinDegThousandths,
  type PlanModel,
  type PlanUnit,
  type PlanWall,
  type WallRun,
} from "@cornerway/engine";
import type { Pad, PointMm } from "@cornerway/schema";
import type { Ink } from "../paper/ink.ts";
import { line, path, polygonD, polylineD, type At } from "../paper/shapes.ts";
import type { Extent, View } from "../paper/view.ts";
import { hexTag, label } from "./signs.ts";

/** What a plan covers: its units, what stands over it and its pads, mm. */
export function planExtent({ units, overhead, below, pads }: PlanModel): Extent {
  const points = [
    ...[...units, ...overhead, ...below].flatMap(({ outline }) => outline),
    ...pads.flatMap((pad) => padCorners(pad).map((at) => project("plan", at))),
  ];
  const us = points.map(({ uMm }) => uMm);
  const vs = points.map(({ vMm }) => vMm);
  if (points.length === 0) return { u0: 0, u1: 1000, v0: 0, v1: 1000 };
  return { u0: Math.min(...us), u1: Math.max(...us), v0: Math.min(...vs), v1: Math.max(...vs) };
}

/** A plan cut through one storey: pads and units below in pencil, cut walls as folded sheet, what is overhead dash-dotted. */
export const planInk = (model: PlanModel, view: View): Ink[] => [
  ...model.pads.map((pad) => path(padD(pad, view), { pen: "fine", dash: "hidden", tone: "graphite" })),
  ...model.below.map((unit) => path(outlineD(unit, view), { pen: "hair", tone: "pencil" })),
  ...model.units.flatMap((unit) => unitInk(unit, view)),
  ...model.overhead.flatMap((unit) => [
    path(outlineD(unit, view), { pen: "edge", dash: "overhead", tone: "graphite" }),
    ...label(overheadSpot(unit, view), `${unit.container.tag} over`, { tone: "graphite" }),
  ]),
  ...model.posts.flatMap(({ post, at }) => {
    const { depthMm, widthMm } = sectionSizeMm(post.section);
    const d = turnedD(view, at.uMm, at.vMm, Math.max(widthMm, 2000 / 20), Math.max(depthMm, 100), post.turnMdeg);
    const spot = view.toPaper(at);
    return [path(d, { fill: "ink" }), ...hexTag({ x: spot.x + 14, y: spot.y - 9 }, post.tag)];
  }),
];

function unitInk(unit: PlanUnit, view: View): Ink[] {
  const { container, placed, walls } = unit;
  const posts = walls.map((wall) => postsD(placed.dimensions, wall, view)).join("");
  const middle = view.toPaper(middleOf(unit));
  return [
    ...walls.flatMap((wall) => wallInk(wall, view)),
    path(posts, { fill: "ink" }),
    ...label({ x: middle.x, y: middle.y - 5 }, container.tag, { size: 10, strong: true }),
  ];
}

function wallInk(wall: PlanWall, view: View): Ink[] {
  const outside = wall.outside.map((run) => runD(wall, run, view, 0)).join("");
  const folded = wall.sheet.map((run) => foldedD(wall, run, view)).join("");
  const openings = wall.openings.flatMap(({ opening, cut, ...run }) => {
    const at = view.toPaper(onWall(wall, (run.fromMm + run.toMm) / 2, 420));
    const ends = [run.fromMm, run.toMm].map((mm) => endD(wall, mm, view)).join("");
    return [
      ...(cut ? openingLines(wall, run, opening.use, view) : []),
      ...(cut ? [path(ends, { pen: "profile" })] : []),
      ...hexTag(at, opening.tag),
    ];
  });
  return [
    ...(outside === "" ? [] : [path(outside, { pen: "profile" })]),
    ...(folded === "" ? [] : [path(folded, { pen: "fine" })]),
    ...openings,
  ];
}

/** Glass as two lines, an open passage as one dashed line, a door as its leaf and swing. */
function openingLines(wall: PlanWall, run: WallRun, use: string, view: View): Ink[] {
  if (use === "window") return [path(runD(wall, run, view, 20) + runD(wall, run, view, 70), { pen: "fine" })];
  if (use === "door") {
    const long = Math.min(run.toMm - run.fromMm, 1000);
    const hinge = onWall(wall, run.fromMm);
    const open = view.toPaper(onWall(wall, run.fromMm, long));
    const [from, shut] = [view.toPaper(hinge), view.toPaper(onWall(wall, run.fromMm + long))];
    const r = view.length(long);
    const cross = (open.x - from.x) * (shut.y - from.y) - (open.y - from.y) * (shut.x - from.x);
    return [
      line(from, open, "edge"),
      path(`M${open.x} ${open.y}A${r} ${r} 0 0 ${cross > 0 ? 1 : 0} ${shut.x} ${shut.y}`, { pen: "hair" }),
    ];
  }
  return [path(runD(wall, run, view, 0), { pen: "fine", dash: "hidden" })];
}

const runD = (wall: PlanWall, { fromMm, toMm }: WallRun, view: View, inMm: number): string =>
  polylineD([view.toPaper(onWall(wall, fromMm, inMm)), view.toPaper(onWall(wall, toMm, inMm))]);

const endD = (wall: PlanWall, atMm: number, view: View): string =>
  polylineD([view.toPaper(onWall(wall, atMm, 0)), view.toPaper(onWall(wall, atMm, 90))]);

/** Depth of the folds drawn, pt: fuller than true, so that a cut wall reads as folded sheet. */
const foldDepth = 1.6;

function foldedD(wall: PlanWall, run: WallRun, view: View): string {
  const deep = foldDepth / view.length(1);
  const quarter = wall.pitchMm / 4;
  const points = [onWall(wall, run.fromMm)];
  for (let at = run.fromMm; at + wall.pitchMm <= run.toMm + 1; at += wall.pitchMm)
    points.push(
      onWall(wall, at + quarter),
      onWall(wall, at + 2 * quarter, deep),
      onWall(wall, at + 3 * quarter, deep),
      onWall(wall, at + wall.pitchMm),
    );
  points.push(onWall(wall, run.toMm));
  return polylineD(points.map(view.toPaper));
}

/** Corner posts at both ends of a wall, to size. */
function postsD(dimensions: PlanUnit["placed"]["dimensions"], wall: PlanWall, view: View): string {
  const wide = dimensions.fitting.lengthMm;
  const deep = dimensions.fitting.widthMm;
  const at = (from: number, to: number) =>
    polygonD(
      [onWall(wall, from), onWall(wall, to), onWall(wall, to, deep), onWall(wall, from, deep)].map(view.toPaper),
    );
  return at(0, wide) + at(wall.lengthMm - wide, wall.lengthMm);
}

export const outlineD = ({ outline }: PlanUnit, view: View): string => polygonD(outline.map(view.toPaper));

const middleOf = ({ outline }: PlanUnit) => ({
  uMm: outline.reduce((sum, { uMm }) => sum + uMm, 0) / outline.length,
  vMm: outline.reduce((sum, { vMm }) => sum + vMm, 0) / outline.length,
});

function overheadSpot(unit: PlanUnit, view: View): At {
  const { x, y } = view.toPaper(middleOf(unit));
  return { x, y: y + 9 };
}

/** The corners of a pad at its top, mm. */
export function padCorners(pad: Pad): PointMm[] {
  const cos = cosDegThousandths(pad.turnMdeg);
  const sin = sinDegThousandths(pad.turnMdeg);
  const [a, b] = [pad.lengthUm / 2000, pad.widthUm / 2000];
  return [
    [-a, -b],
    [a, -b],
    [a, b],
    [-a, b],
  ].map(([u = 0, v = 0]) => ({
    xMm: pad.xUm / 1000 + u * cos - v * sin,
    yMm: pad.yUm / 1000 + u * sin + v * cos,
    zMm: pad.topZUm / 1000,
  }));
}

export const padD = (pad: Pad, view: View): string =>
  polygonD(padCorners(pad).map((at) => view.toPaper(project("plan", at))));

function turnedD(view: View, uMm: number, vMm: number, a: number, b: number, turnMdeg: number): string {
  const cos = cosDegThousandths(turnMdeg);
  const sin = sinDegThousandths(turnMdeg);
  const corners = [
    [-a / 2, -b / 2],
    [a / 2, -b / 2],
    [a / 2, b / 2],
    [-a / 2, b / 2],
  ].map(([u = 0, v = 0]) => view.toPaper({ uMm: uMm + u * cos - v * sin, vMm: vMm + u * sin + v * cos }));
  return polygonD(corners);
}

/** The eye of a plan for what is added. */
export const planEye = (view: View) => ({ plan: true, toPaper: (at: PointMm) => view.toPaper(project("plan", at)) });
