import { toSite } from "@cornerway/engine";
import type { PlacedContainer } from "@cornerway/engine";

/** Units that only touch along a side do not lie over each other. */
const touchMm = 5;

export interface BoxMm {
  west: number;
  east: number;
  south: number;
  north: number;
}

/** The upright box round a unit in plan. */
export function boxOf(placed: PlacedContainer): BoxMm {
  const corners = cornersOf(placed);
  const xs = corners.map((corner) => corner.xMm);
  const ys = corners.map((corner) => corner.yMm);
  return { west: Math.min(...xs), east: Math.max(...xs), south: Math.min(...ys), north: Math.max(...ys) };
}

/** True when two units share ground in plan, by separating axes; touching is not sharing. */
export function footprintsOverlap(a: PlacedContainer, b: PlacedContainer): boolean {
  return axesOf(a, b).every(([ux, uy]) => {
    const along = (placed: PlacedContainer) => cornersOf(placed).map(({ xMm, yMm }) => xMm * ux + yMm * uy);
    const first = along(a);
    const second = along(b);
    const shared =
      Math.min(Math.max(...first), Math.max(...second)) - Math.max(Math.min(...first), Math.min(...second));
    return shared > touchMm;
  });
}

const axesOf = (a: PlacedContainer, b: PlacedContainer): [number, number][] =>
  [a, b].flatMap(({ frame }): [number, number][] => [
    [frame.cos, frame.sin],
    [-frame.sin, frame.cos],
  ]);

function cornersOf({ dimensions, frame }: PlacedContainer) {
  const x = dimensions.lengthMm / 2;
  const y = dimensions.widthMm / 2;
  return [
    { xMm: -x, yMm: -y },
    { xMm: x, yMm: -y },
    { xMm: x, yMm: y },
    { xMm: -x, yMm: y },
  ].map((corner) => toSite(frame, { ...corner, zMm: 0 }));
}
