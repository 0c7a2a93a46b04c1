import { project, type ElevationModel, type ElevationPad, type ElevationPost, type Side } from "@cornerway/engine";
import type { PointMm, UnitSystem } from "@cornerway/schema";
import { pt, type Ink } from "../paper/ink.ts";
import { box, line, path, rule, text } from "../paper/shapes.ts";
import type { Extent, View } from "../paper/view.ts";
import { written } from "../written.ts";
import { alongString, uprightString } from "./dimensions.ts";
import { rectOnPaper } from "./elevation.ts";
import { concrete, diagonals, groundHatch } from "./hatch.ts";
import { gridBubble, hexTag, levelMark } from "./signs.ts";

/** The building with its pads, mm on the paper of the elevation. */
export function elevationExtent({ extent, pads, posts, groundMm }: ElevationModel): Extent {
  const rects = [...(extent === null ? [] : [extent]), ...pads, ...posts];
  if (rects.length === 0) return { u0: 0, u1: 1000, v0: groundMm - 600, v1: groundMm + 2600 };
  return {
    u0: Math.min(...rects.map(({ u0Mm }) => u0Mm)),
    u1: Math.max(...rects.map(({ u1Mm }) => u1Mm)),
    v0: Math.min(groundMm - 600, ...rects.map(({ z0Mm }) => z0Mm)),
    v1: Math.max(groundMm + 2600, ...rects.map(({ z1Mm }) => z1Mm)),
  };
}

/** Added posts: paired diagonals between their edges, dashed where a face stands before them. */
export const postsInk = (posts: readonly ElevationPost[], view: View): Ink[] =>
  [...postsByPlace(posts)].flatMap(([, [post, ...behind]]) => {
    const at = rectOnPaper(view, post);
    const wide = at.width < 2.4 ? { ...at, x: at.x + at.width / 2 - 1.2, width: 2.4 } : at;
    if (post.behind) return [box(wide, { pen: "fine", dash: "hidden" })];
    const tags = [post, ...behind].map((each) => each.post.tag).join(", ");
    return [
      box(wide, { fill: "paper", pen: "edge" }),
      path(diagonals(wide, 6, 1.6), { pen: "hair" }),
      ...hexTag({ x: wide.x + wide.width + 14 + 3 * behind.length, y: wide.y + wide.height * 0.62 }, tags),
    ];
  });

type PostRow = [ElevationPost, ...ElevationPost[]];

/** Posts one behind the other are drawn once, the seen ones with the tags of all of them. */
function postsByPlace(posts: readonly ElevationPost[]): Map<string, PostRow> {
  const places = new Map<string, PostRow>();
  for (const post of posts) {
    const { u0Mm, u1Mm, z0Mm, z1Mm, behind } = post;
    const key = [...[u0Mm, u1Mm, z0Mm, z1Mm].map(Math.round), behind].join(" ");
    const row = places.get(key);
    if (row === undefined) places.set(key, [post]);
    else row.push(post);
  }
  return places;
}

/** Pads in section on the line of the ground; those farther back as outlines. */
export const padsInk = (pads: readonly ElevationPad[], view: View): Ink[] =>
  pads.flatMap((pad, at) => {
    const rect = rectOnPaper(view, pad);
    if (pad.behind) return [box(rect, { pen: "fine", dash: "hidden", tone: "graphite", fill: "paper" })];
    const { dots, triangles } = concrete(rect, at + 1);
    return [
      box(rect, { pen: "profile", fill: "paper" }),
      path(dots, { pen: "edge", tone: "graphite" }),
      path(triangles, { pen: "hair", tone: "graphite" }),
      text(rect.x + rect.width / 2, rect.y + rect.height + 8, pad.pad.tag, { size: 7, anchor: "middle" }),
    ];
  });

export function groundInk({ groundMm }: ElevationModel, view: View, extent: Extent): Ink[] {
  const [x0, x1] = [view.x(extent.u0) - 26, view.x(extent.u1) + 26];
  const y = view.y(groundMm);
  return [path(groundHatch(x0, x1, y), { pen: "hair", tone: "graphite" }), rule(x0, x1, y, "border")];
}

/** Grid with its bubbles, levels, and strings of dimensions: between grid lines, overall, and from level to level. */
export function elevationFrame(model: ElevationModel, view: View, extent: Extent, units: UnitSystem): Ink[] {
  const say = written[units];
  const top = view.y(extent.v1) - 30;
  const foot = view.y(extent.v0) + 14;
  const left = view.x(extent.u0) - 34;
  const right = view.x(extent.u1) + 30;
  const places = spread(model.grid.map(({ atMm }) => view.x(atMm)));
  const grid = model.grid.flatMap(({ label, atMm }, index) => {
    const [x, at] = [view.x(atMm), places[index] ?? 0];
    return [
      path(`M${at} ${pt(top + 8)}L${x} ${pt(top + 18)}V${pt(foot + 4)}`, {
        pen: "hair",
        dash: "centre",
        tone: "pencil",
      }),
      ...gridBubble({ x: at, y: top }, label),
    ];
  });
  const levels = model.levels.flatMap(({ name, zMm }) => {
    const y = view.y(zMm);
    return [
      line({ x: left, y }, { x: right - 8, y }, "hair", { dash: "centre", tone: "pencil" }),
      ...levelMark({ x: left, y }, name, say.level(zMm)),
    ];
  });
  const us = { mm: model.grid.map(({ atMm }) => atMm), at: view.x };
  const first = us.mm.at(0);
  const last = us.mm.at(-1);
  const overall = first === undefined || last === undefined ? [] : [first, last];
  const heights = model.levels.map(({ zMm }) => zMm);
  return [
    ...grid,
    ...levels,
    ...alongString(us, foot + 12, foot + 2, units),
    ...(us.mm.length > 2 ? alongString({ mm: overall, at: view.x }, foot + 30, foot + 14, units) : []),
    ...uprightString({ mm: heights, at: view.y }, right, right - 12, units),
  ];
}

/** Bubbles of close lines step aside. */
function spread(places: readonly number[]): number[] {
  const least = 17;
  const moved: number[] = [];
  for (const place of places) moved.push(Math.max(place, (moved.at(-1) ?? -Infinity) + least));
  const shift = moved.length === 0 ? 0 : ((moved.at(-1) ?? 0) - (places.at(-1) ?? 0)) / 2;
  return moved.map((place) => pt(place - shift));
}

/** The eye of an elevation for what is added. */
export const elevationEye = (side: Side, view: View) => ({
  plan: false,
  toPaper: (at: PointMm) => view.toPaper(project(side, at)),
});
