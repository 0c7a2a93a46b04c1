import { convexHull, type PlacedObject, type SeenObject } from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";
import { pt, type Ink } from "../paper/ink.ts";
import { circleD, line, path, polygonD, type At } from "../paper/shapes.ts";
import { label } from "./signs.ts";

/** How a view looks at what is added: the paper point of a site point, and whether it looks down. */
export type ObjectEye = { plan: boolean; toPaper: (at: PointMm) => At };

/** Beams, seats, ties and locks as a view sees them; what is behind is dashed. Loads stand on plans of their own. */
export const objectsInk = (objects: readonly SeenObject[], eye: ObjectEye): Ink[] =>
  objects.flatMap(({ object, hidden }) => objectInk(object, hidden, eye));

function objectInk(object: PlacedObject, hidden: boolean, eye: ObjectEye): Ink[] {
  switch (object.kind) {
    case "beam":
      return beamInk(object, hidden, eye);
    case "seat":
      return seatInk(object, hidden, eye);
    case "tie":
      return tieInk(object, eye);
    case "lock":
      return lockInk(object, eye);
    case "load":
      return [];
  }
}

type Of<K extends PlacedObject["kind"]> = Extract<PlacedObject, { kind: K }>;

const hullOf = (points: readonly At[]): At[] =>
  convexHull(points.map(({ x, y }) => ({ rightMm: x, downMm: y }))).map(({ rightMm, downMm }) => ({
    x: rightMm,
    y: downMm,
  }));

function beamInk({ box, ends, tag }: Of<"beam">, hidden: boolean, eye: ObjectEye): Ink[] {
  const d = polygonD(hullOf(box.map(eye.toPaper)));
  const [a, b] = ends.map(eye.toPaper);
  const dash = eye.plan && !hidden ? "overhead" : hidden || eye.plan ? "hidden" : undefined;
  const outline = path(d, { pen: "edge", ...(dash === undefined ? { fill: "band" as const } : { dash }) });
  if (a === undefined || b === undefined) return [outline];
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 - (eye.plan ? 4 : 3) };
  const axis = eye.plan ? [line(a, b, "hair", { dash: "centre" })] : [];
  return [outline, ...axis, ...label(middle, tag, { strong: true })];
}

function seatInk({ box, tag, seat, at }: Of<"seat">, hidden: boolean, eye: ObjectEye): Ink[] {
  const d = polygonD(grown(hullOf(box.map(eye.toPaper)), eye.plan ? 4 : 2));
  const spot = eye.toPaper(at);
  const plate = eye.plan
    ? path(d, { pen: "edge", fill: hidden ? "paper" : "band", ...(hidden ? { dash: "hidden" as const } : {}) })
    : path(d, { fill: "ink" });
  const bolts = seat.heldDown ? [path(circleD(spot, 1.2), { fill: "ink" })] : [];
  return [plate, ...bolts, ...label({ x: spot.x, y: spot.y + (eye.plan ? 11 : 12) }, tag, { strong: true })];
}

/** A thing too thin to print is drawn at the least size that does. */
function grown(hull: readonly At[], least: number): At[] {
  const xs = hull.map(({ x }) => x);
  const ys = hull.map(({ y }) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  if (x1 - x0 >= least && y1 - y0 >= least) return [...hull];
  const [dx, dy] = [Math.max(0, least - (x1 - x0)) / 2, Math.max(0, least - (y1 - y0)) / 2];
  return [
    { x: x0 - dx, y: y0 - dy },
    { x: x1 + dx, y: y0 - dy },
    { x: x1 + dx, y: y1 + dy },
    { x: x0 - dx, y: y1 + dy },
  ];
}

function tieInk({ ends, at, tag }: Of<"tie">, eye: ObjectEye): Ink[] {
  const [a, b, spot] = [eye.toPaper(ends[0]), eye.toPaper(ends[1]), eye.toPaper(at)];
  const endOn = Math.abs(a.x - b.x) + Math.abs(a.y - b.y) < 3;
  const bar = endOn
    ? [path(circleD(spot, 2.4), { pen: "edge", fill: "paper" }), path(circleD(spot, 0.8), { fill: "ink" })]
    : [line(a, b, "profile"), path(circleD(a, 1.3) + circleD(b, 1.3), { fill: "ink" })];
  return [...bar, ...label({ x: spot.x, y: spot.y - 4 }, tag)];
}

function lockInk({ lock, at }: Of<"lock">, eye: ObjectEye): Ink[] {
  const { x, y } = eye.toPaper(at);
  switch (lock.kind) {
    case "lock":
      return [
        path(
          polygonD([
            { x, y: y - 4 },
            { x: x + 2.8, y },
            { x, y: y + 4 },
            { x: x - 2.8, y },
          ]),
          { pen: "fine", fill: "paper" },
        ),
        line({ x: x - 3.6, y }, { x: x + 3.6, y }, "fine"),
      ];
    case "made connection":
      return [
        path(
          `M${pt(x - 3)} ${pt(y - 3.6)}V${pt(y)}H${pt(x - 6.4)}ZM${pt(x + 3)} ${pt(y - 3.6)}V${pt(y)}H${pt(x + 6.4)}Z`,
          { fill: "ink" },
        ),
      ];
    case "hold-down":
      return [
        line({ x, y: y - 4 }, { x, y: y + 7 }, "edge"),
        path(`M${pt(x - 2.6)} ${pt(y + 5)}L${pt(x)} ${pt(y + 8)}L${pt(x + 2.6)} ${pt(y + 5)}`, { pen: "edge" }),
      ];
  }
}
