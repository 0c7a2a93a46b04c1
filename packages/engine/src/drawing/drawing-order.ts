import { solidCorners, type PlacedContainer } from "../geometry/place.ts";

/** Far units first: one is behind another when a plane between them puts it north, west or below. */
export function drawingOrder(placed: readonly PlacedContainer[]): PlacedContainer[] {
  const bounds = new Map(placed.map((unit) => [unit.id, boundsOf(unit)]));
  const left = placed.toSorted((a, b) => a.baseZMm - b.baseZMm || (a.id < b.id ? -1 : 1));
  const order: PlacedContainer[] = [];
  while (left.length > 0) {
    const at = left.findIndex((unit) =>
      left.every((other) => other === unit || !behind(bounds.get(other.id), bounds.get(unit.id))),
    );
    order.push(...left.splice(Math.max(0, at), 1));
  }
  return order;
}

type Bounds = { x0: number; x1: number; y0: number; y1: number; z0: number; z1: number };

const touchMm = 30;

/** True when `a` has to be drawn before `b`. */
function behind(a: Bounds | undefined, b: Bounds | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  if (a.z1 <= b.z0 + touchMm) return true;
  if (b.z1 <= a.z0 + touchMm) return false;
  if (a.y0 >= b.y1 - touchMm) return true;
  if (b.y0 >= a.y1 - touchMm) return false;
  return a.x1 <= b.x0 + touchMm;
}

function boundsOf(unit: PlacedContainer): Bounds {
  const corners = solidCorners(unit);
  const xs = corners.map(({ xMm }) => xMm);
  const ys = corners.map(({ yMm }) => yMm);
  return {
    x0: Math.min(...xs),
    x1: Math.max(...xs),
    y0: Math.min(...ys),
    y1: Math.max(...ys),
    z0: unit.baseZMm,
    z1: unit.topZMm,
  };
}
