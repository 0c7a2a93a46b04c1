import type { PlacedObject } from "@cornerway/engine";
import type { PointMm, UnitSystem } from "@cornerway/schema";
import { hatchFill, pencilFill } from "../../look/hatch.ts";
import { dash, ink } from "../../look/ink.ts";
import { linePath, polygonPath, px, type RectPx } from "../px-path.ts";
import type { ScreenPoint } from "../view-transform.ts";
import { loadFigure } from "./load-figure.ts";
import type { ObjectEye } from "./object-eye.ts";
import { boundsOf, hullOf } from "./px-shapes.ts";

export type InkPath = { d: string; fill?: string; stroke?: string; width?: number; dash?: string };
/** What a view draws of one thing: its strokes, their bounds, and the word or figure beside it. */
export type ObjectInk = { paths: InkPath[]; rect: RectPx; figure: string | null };

/** Draws one added thing as an eye sees it; hidden things are dashed. */
export function objectInk(object: PlacedObject, eye: ObjectEye, hidden: boolean, units: UnitSystem): ObjectInk {
  switch (object.kind) {
    case "beam":
      return beamInk(object, eye, hidden);
    case "seat":
      return seatInk(object, eye, hidden);
    case "tie":
      return tieInk(object, eye);
    case "lock":
      return lockInk(object, eye);
    case "load":
      return loadInk(object, eye, units);
  }
}

type Of<K extends PlacedObject["kind"]> = Extract<PlacedObject, { kind: K }>;

function beamInk({ box, ends, tag }: Of<"beam">, eye: ObjectEye, hidden: boolean): ObjectInk {
  const hull = hullOf(box.map(eye.toPx));
  const [from, to] = ends.map(eye.toPx);
  const long = from === undefined || to === undefined ? 0 : Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx);
  const outline = polygonPath(hull);
  const solid: InkPath[] = [
    { d: outline, fill: ink.paper },
    { d: outline, fill: hatchFill("works with steel", "small"), stroke: ink.prussian, width: 1.1 },
  ];
  // In plan a beam lies under the floor or over the cut: it is never cut itself.
  const family = eye.kind === "plan" && !hidden ? dash.overhead : dash.hidden;
  const dashed: InkPath[] = [{ d: outline, fill: "none", stroke: ink.prussian, width: 0.9, dash: family }];
  const axis =
    eye.kind === "plan" && from !== undefined && to !== undefined && long > 12
      ? [{ d: linePath(from.xPx, from.yPx, to.xPx, to.yPx), stroke: ink.prussian, width: 0.6, dash: dash.centre }]
      : [];
  return { paths: [...(hidden || eye.kind === "plan" ? dashed : solid), ...axis], rect: boundsOf(hull), figure: tag };
}

const leastPlatePx = 3.2;
const leastPlanPx = 5;

function seatInk({ box, seat, tag }: Of<"seat">, eye: ObjectEye, hidden: boolean): ObjectInk {
  const hull = grown(hullOf(box.map(eye.toPx)), eye.kind === "plan" ? leastPlanPx : leastPlatePx);
  const rect = boundsOf(hull);
  const outline = polygonPath(hull);
  const plate: InkPath[] =
    eye.kind === "plan"
      ? [
          { d: outline, fill: ink.paper },
          {
            d: outline,
            fill: hidden ? "none" : hatchFill("works with steel", "small"),
            stroke: ink.prussian,
            width: 1.1,
            ...(hidden ? { dash: "3 2" } : {}),
          },
        ]
      : [{ d: outline, fill: ink.prussian }];
  return { paths: [...plate, ...(seat.heldDown ? bolts(rect, eye) : [])], rect, figure: tag };
}

/** What holds a unit down on its seat: a bolt near each end. */
function bolts(rect: RectPx, eye: ObjectEye): InkPath[] {
  const [left, right] = [rect.xPx + rect.widthPx * 0.2, rect.xPx + rect.widthPx * 0.8];
  const y = rect.yPx + rect.heightPx / 2;
  if (eye.kind === "plan")
    return [{ d: circle({ xPx: rect.xPx + rect.widthPx / 2, yPx: y }, 1.8), fill: ink.prussian }];
  return [
    { d: linePath(left, y - 6, left, y + 6) + linePath(right, y - 6, right, y + 6), stroke: ink.prussian, width: 1.1 },
  ];
}

const tieHoldPx = 1.8;
const leastTiePx = 9;

function tieInk({ ends, tie, at }: Of<"tie">, eye: ObjectEye): ObjectInk {
  const middle = eye.toPx(at);
  const [a, b] = stretched(eye.toPx(ends[0]), eye.toPx(ends[1]), leastTiePx);
  const endOn = Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx) < leastTiePx / 2;
  const upright = tie.carries === "in plan and upright";
  const cross: InkPath[] = upright
    ? [{ d: linePath(middle.xPx, middle.yPx - 5, middle.xPx, middle.yPx + 5), stroke: ink.prussian, width: 1.6 }]
    : [];
  const bar: InkPath[] = endOn
    ? [
        { d: circle(middle, 3.6), fill: ink.paper, stroke: ink.prussian, width: 1.1 },
        { d: circle(middle, 1.2), fill: ink.prussian },
      ]
    : [
        { d: linePath(a.xPx, a.yPx, b.xPx, b.yPx), stroke: ink.prussian, width: 1.6 },
        { d: square(a, tieHoldPx) + square(b, tieHoldPx), fill: ink.prussian },
      ];
  return { paths: [...bar, ...cross], rect: boundsOf([a, b, middle]), figure: null };
}

function lockInk({ lock, at }: Of<"lock">, eye: ObjectEye): ObjectInk {
  const { xPx, yPx } = eye.toPx(at);
  const rect = { xPx: xPx - 5, yPx: yPx - 6, widthPx: 10, heightPx: 12 };
  switch (lock.kind) {
    case "lock": {
      const lozenge = `M${px(xPx)} ${px(yPx - 6)}L${px(xPx + 4)} ${px(yPx)}L${px(xPx)} ${px(yPx + 6)}L${px(xPx - 4)} ${px(yPx)}Z`;
      return {
        paths: [
          { d: lozenge, fill: ink.slip, stroke: ink.ink, width: 1.1 },
          { d: linePath(xPx - 5.5, yPx, xPx + 5.5, yPx), stroke: ink.ink, width: 1.1 },
        ],
        rect,
        figure: null,
      };
    }
    case "made connection": {
      const weld = (side: 1 | -1) => `M${px(xPx + side * 4)} ${px(yPx - 5)}V${px(yPx)}H${px(xPx + side * 9)}Z`;
      const plan = `M${px(xPx - 4.5)} ${px(yPx - 4.5)}h9v9h-9Zl9 9`;
      return {
        paths:
          eye.kind === "plan"
            ? [{ d: plan, fill: ink.paper, stroke: ink.prussian, width: 1.1 }]
            : [{ d: weld(1) + weld(-1), fill: ink.prussian }],
        rect: { xPx: xPx - 9, yPx: yPx - 6, widthPx: 18, heightPx: 12 },
        figure: null,
      };
    }
    case "hold-down": {
      const anchor = `M${px(xPx)} ${px(yPx - 5)}V${px(yPx + 10)}h-4v-3`;
      return {
        paths:
          eye.kind === "plan"
            ? [
                { d: circle({ xPx, yPx }, 4), fill: ink.paper, stroke: ink.prussian, width: 1.1 },
                { d: circle({ xPx, yPx }, 1.3), fill: ink.prussian },
              ]
            : [
                { d: anchor, fill: "none", stroke: ink.prussian, width: 1.4 },
                { d: square({ xPx, yPx: yPx - 3 }, 2.2), fill: ink.prussian },
              ],
        rect: { ...rect, heightPx: 16 },
        figure: null,
      };
    }
  }
}

const arrowPx = 24;

function loadInk({ load, outline, aside }: Of<"load">, eye: ObjectEye, units: UnitSystem): ObjectInk {
  const feet = outline.map(eye.toPx);
  const figure = loadFigure(load, units);
  const pen = { stroke: ink.graphite, width: 0.9 };
  if (eye.kind === "plan") {
    const spread: InkPath[] =
      feet.length > 2
        ? [{ d: polygonPath(feet), fill: pencilFill.open, ...pen, dash: "4 2" }]
        : feet.length === 2
          ? [{ d: between(feet), ...pen, width: 1.6 }]
          : [];
    const spots = feet.length > 2 ? [] : feet;
    const pushed = aside === null ? [] : spots.map((foot) => arrow(foot, offBy(foot, aside)));
    return {
      paths: [
        ...spread,
        ...spots.map((foot) => ({ d: circle(foot, 4.4), fill: ink.paper, ...pen })),
        ...spots.map((foot) => ({ d: saltire(foot, 3.1), ...pen })),
        ...pushed.map((d) => ({ d, ...pen, fill: ink.graphite })),
      ],
      rect: boundsOf(spots.length > 0 ? spots.flatMap((spot) => around(spot, 5)) : feet),
      figure,
    };
  }
  const tops = alongOutline(feet).map((foot) => ({ foot, top: { xPx: foot.xPx, yPx: foot.yPx - arrowPx } }));
  const heads = feet.map(({ xPx, yPx }) => ({ xPx, yPx: yPx - arrowPx }));
  const lid = feet.length > 1 ? [{ d: feet.length > 2 ? polygonPath(heads) : between(heads), ...pen }] : [];
  return {
    paths: [...lid, ...tops.map(({ foot, top }) => ({ d: arrow(top, foot), ...pen, fill: ink.graphite }))],
    rect: boundsOf([...feet, ...heads]),
    figure,
  };
}

/** Feet of the arrows of a load: its corners, and more along a line. */
function alongOutline(feet: readonly ScreenPoint[]): ScreenPoint[] {
  const [from, to] = feet;
  if (feet.length !== 2 || from === undefined || to === undefined) return [...feet];
  const steps = Math.max(1, Math.min(8, Math.round(Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) / 14)));
  return Array.from({ length: steps + 1 }, (_, at) => ({
    xPx: from.xPx + ((to.xPx - from.xPx) * at) / steps,
    yPx: from.yPx + ((to.yPx - from.yPx) * at) / steps,
  }));
}

const between = ([a, b]: readonly ScreenPoint[]): string =>
  a === undefined || b === undefined ? "" : linePath(a.xPx, a.yPx, b.xPx, b.yPx);

function offBy(foot: ScreenPoint, aside: PointMm): ScreenPoint {
  return { xPx: foot.xPx + aside.xMm * arrowPx, yPx: foot.yPx - aside.yMm * arrowPx };
}

/** A shaft with a filled head at its second end. */
function arrow(from: ScreenPoint, to: ScreenPoint): string {
  const long = Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) || 1;
  const [x, y] = [(to.xPx - from.xPx) / long, (to.yPx - from.yPx) / long];
  const wing = (side: 1 | -1) => `${px(to.xPx - x * 6 - y * side * 2.2)} ${px(to.yPx - y * 6 + x * side * 2.2)}`;
  return `${linePath(from.xPx, from.yPx, to.xPx, to.yPx)}M${px(to.xPx)} ${px(to.yPx)}L${wing(1)}L${wing(-1)}Z`;
}

const circle = ({ xPx, yPx }: ScreenPoint, radius: number): string =>
  `M${px(xPx - radius)} ${px(yPx)}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`;

const square = ({ xPx, yPx }: ScreenPoint, half: number): string =>
  `M${px(xPx - half)} ${px(yPx - half)}h${2 * half}v${2 * half}h${-2 * half}Z`;

const saltire = ({ xPx, yPx }: ScreenPoint, half: number): string =>
  linePath(xPx - half, yPx - half, xPx + half, yPx + half) + linePath(xPx - half, yPx + half, xPx + half, yPx - half);

const around = ({ xPx, yPx }: ScreenPoint, half: number): ScreenPoint[] => [
  { xPx: xPx - half, yPx: yPx - half },
  { xPx: xPx + half, yPx: yPx + half },
];

/** Two ends drawn apart to a least length, unless they lie one behind the other. */
function stretched(a: ScreenPoint, b: ScreenPoint, leastPx: number): [ScreenPoint, ScreenPoint] {
  const long = Math.hypot(b.xPx - a.xPx, b.yPx - a.yPx);
  if (long < 1 || long >= leastPx) return [a, b];
  const middle = { xPx: (a.xPx + b.xPx) / 2, yPx: (a.yPx + b.yPx) / 2 };
  const [x, y] = [((b.xPx - a.xPx) / long) * (leastPx / 2), ((b.yPx - a.yPx) / long) * (leastPx / 2)];
  return [
    { xPx: middle.xPx - x, yPx: middle.yPx - y },
    { xPx: middle.xPx + x, yPx: middle.yPx + y },
  ];
}

/** A shape drawn at least so thick, so that a plate of millimetres is still seen. */
function grown(hull: readonly ScreenPoint[], leastPx: number): ScreenPoint[] {
  const { xPx, yPx, widthPx, heightPx } = boundsOf(hull);
  const [cx, cy] = [xPx + widthPx / 2, yPx + heightPx / 2];
  const [wide, high] = [leastPx / Math.max(widthPx, 0.01), leastPx / Math.max(heightPx, 0.01)];
  return hull.map((point) => ({
    xPx: cx + (point.xPx - cx) * Math.max(1, wide),
    yPx: cy + (point.yPx - cy) * Math.max(1, high),
  }));
}
