import { toLocal } from "../../geometry/place.ts";
import type { BuildingFrame, UnitBox } from "../building-frame.ts";

/** Units that move together if they move: one, a stack from one unit up, or the whole. */
export type Body = {
  readonly id: string;
  readonly kind: "unit" | "stack" | "whole";
  readonly unitIds: readonly string[];
  /** Rectangle around the bearings it would turn about, in the building's axes, mm, and their height. */
  readonly base: {
    readonly x0: number;
    readonly x1: number;
    readonly y0: number;
    readonly y1: number;
    readonly zMm: number;
  };
  /** It carries units that stand on others too: what they give it is not shared out by statics of one body. */
  readonly shared: boolean;
};

/** Each unit alone, each stack from every unit that carries something, and the whole, in the order of the scheme. */
export function bodiesOf(building: BuildingFrame): Body[] {
  const { boxes } = building;
  const lowest = Math.min(...boxes.map(({ z0 }) => z0));
  const ground = boxes.filter(({ z0 }) => z0 - lowest < touchMm);
  const stacks = boxes.flatMap((box): Body[] => {
    const above = allAbove(box, boxes);
    if (above.length === 0) return [];
    const own = [box, ...above];
    const shared = above.some((upper) => boxes.some((other) => carries(other, upper) && !own.includes(other)));
    return [{ id: `stack on ${box.id}`, kind: "stack", unitIds: idsOf(own), base: bearingBase(building, box), shared }];
  });
  return [
    ...boxes.map((box): Body => ({
      id: box.id,
      kind: "unit",
      unitIds: [box.id],
      base: bearingBase(building, box),
      shared: false,
    })),
    ...stacks,
    { id: "the whole", kind: "whole", unitIds: idsOf(boxes), base: fittingBase(building, ground), shared: false },
  ];
}

const idsOf = (boxes: readonly UnitBox[]): string[] => boxes.map(({ id }) => id);

/**
 * A unit stands on another if it starts where that ends, within the gaps between stacked units, and overlaps it in
 * plan.
 */
const touchMm = 25;
const carries = (lower: UnitBox, upper: UnitBox): boolean =>
  Math.abs(upper.z0 - lower.z1) < touchMm &&
  Math.min(lower.x1, upper.x1) - Math.max(lower.x0, upper.x0) > touchMm &&
  Math.min(lower.y1, upper.y1) - Math.max(lower.y0, upper.y0) > touchMm;

function allAbove(box: UnitBox, boxes: readonly UnitBox[]): UnitBox[] {
  const found: UnitBox[] = [];
  const open = [box];
  for (let lower = open.pop(); lower !== undefined; lower = open.pop()) {
    const from = lower;
    for (const upper of boxes) {
      if (found.includes(upper) || !carries(from, upper)) continue;
      found.push(upper);
      open.push(upper);
    }
  }
  return boxes.filter((one) => found.includes(one));
}

/** What one unit stands on: its own fittings on the ground, else where its rectangle of fittings and those below it lap. */
function bearingBase(building: BuildingFrame, box: UnitBox): Body["base"] {
  const own = fittingBase(building, [box]);
  const below = building.boxes.filter((lower) => carries(lower, box)).map((lower) => fittingBase(building, [lower]));
  if (below.length === 0) return own;
  const laps = below.map((lower) => ({
    x0: Math.max(own.x0, lower.x0),
    x1: Math.min(own.x1, lower.x1),
    y0: Math.max(own.y0, lower.y0),
    y1: Math.min(own.y1, lower.y1),
  }));
  return { ...boundsOf(laps), zMm: own.zMm };
}

/** Centres of the bottom fittings: bearings do not reach the outer faces. */
function fittingBase({ axes }: BuildingFrame, boxes: readonly UnitBox[]): Body["base"] {
  const places = boxes.flatMap(({ placed }) => placed.bottomFittings.map(({ at }) => toLocal(axes, at)));
  const points = places.map(({ xMm, yMm }) => ({ x0: xMm, x1: xMm, y0: yMm, y1: yMm }));
  return { ...boundsOf(points), zMm: Math.min(...boxes.map(({ z0 }) => z0)) };
}

type PlanRect = { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };

const boundsOf = (rects: readonly PlanRect[]): PlanRect => ({
  x0: Math.min(...rects.map(({ x0 }) => x0)),
  x1: Math.max(...rects.map(({ x1 }) => x1)),
  y0: Math.min(...rects.map(({ y0 }) => y0)),
  y1: Math.max(...rects.map(({ y1 }) => y1)),
});
