import type { Side } from "../drawing/contract.ts";

/** Right and away, as the eye of an elevation has them, as rows of site x and y. */
export const eyeAxes: Record<Side, { x: readonly [number, number]; y: readonly [number, number] }> = {
  south: { x: [1, 0], y: [0, 1] },
  north: { x: [-1, 0], y: [0, -1] },
  east: { x: [0, -1], y: [1, 0] },
  west: { x: [0, 1], y: [-1, 0] },
};

export interface StepsMm {
  rightMm: number;
  /** Away from the eye; up for an opening on its wall. */
  upMm: number;
}

/** Steps as the eye has them, in site x and y. */
export const inSite = (side: Side, { rightMm, upMm }: StepsMm) => {
  const { x, y } = eyeAxes[side];
  return { xMm: x[0] * rightMm + x[1] * upMm, yMm: y[0] * rightMm + y[1] * upMm, zMm: 0 };
};
