import { toSite } from "../geometry/place.ts";
import { LastMade } from "../numerics/last-made.ts";
import type { ActionCase, ActionLoad } from "./action-case.ts";
import { outlineOf, type BuildingFrame } from "./building-frame.ts";
import type { Axis } from "./wind-shape.ts";

/**
 * The force of one level along each axis, N, and the part of each unit; undefined along an axis whose system is
 * refused.
 */
export type LevelForces = {
  readonly heightMm: number;
  readonly units: readonly { readonly id: string; readonly share: number }[];
  readonly xN: number | undefined;
  readonly yN: number | undefined;
};

/**
 * Cases along each axis, both ways, with the masses off their places either way, and with a share of the other axis'
 * forces where the code asks for it. Anticlockwise means: turned so, seen from above.
 */
export function seismicLoads(
  building: BuildingFrame,
  levels: readonly LevelForces[],
  eccentricities: Readonly<Record<Axis, number>>,
  orthogonalShare: number,
): readonly ActionCase[] {
  const by = JSON.stringify([levels, eccentricities, orthogonalShare]);
  return last.take(building, [by], () => casesOf(building, levels, eccentricities, orthogonalShare));
}

/** Masses and eccentricities often stay when the drawing is edited. */
const last = new LastMade<readonly ActionCase[]>();

function casesOf(
  building: BuildingFrame,
  levels: readonly LevelForces[],
  eccentricities: Readonly<Record<Axis, number>>,
  orthogonalShare: number,
): ActionCase[] {
  const shares = orthogonalShare === 0 ? [0] : [orthogonalShare, -orthogonalShare];
  return axes
    .flatMap((axis) =>
      signs.flatMap((sign) =>
        signs.flatMap((turn) =>
          shares.map((share) => ({
            id: named(axis, sign, turn, share),
            symbol: "Eh" as const,
            loads: levels.flatMap((level) => [
              ...levelLoads(building, level, axis, sign, turn * eccentricities[axis]),
              ...(share === 0 ? [] : levelLoads(building, level, axis === "x" ? "y" : "x", share, 0)),
            ]),
          })),
        ),
      ),
    )
    .filter(({ loads }) => loads.length > 0);
}

const axes: readonly Axis[] = ["x", "y"];
const signs = [1, -1] as const;

function named(axis: Axis, sign: number, turn: number, share: number): string {
  const other = axis === "x" ? "y" : "x";
  const beside = share === 0 ? "" : ` with ${share > 0 ? "+" : "-"}${Math.abs(share)} ${other}`;
  return `E ${sign > 0 ? "+" : "-"}${axis} ${turn > 0 ? "anticlockwise" : "clockwise"}${beside}`;
}

/** The level's force on its units at its height; the place is moved across the force so that it turns the building. */
function levelLoads(
  building: BuildingFrame,
  level: LevelForces,
  axis: Axis,
  factor: number,
  eccentricity: number,
): ActionLoad[] {
  const force = axis === "x" ? level.xN : level.yN;
  if (force === undefined) return [];
  const boxes = building.boxes.filter(({ id }) => level.units.some((unit) => unit.id === id));
  const outline = outlineOf(boxes);
  const width = axis === "x" ? outline.y1 - outline.y0 : outline.x1 - outline.x0;
  const off = (axis === "x" ? -1 : 1) * eccentricity * width * Math.sign(factor);
  return boxes.map(({ id, x0, x1, y0, y1 }) => {
    const part = factor * force * (level.units.find((unit) => unit.id === id)?.share ?? 0);
    const centre = { xMm: (x0 + x1) / 2, yMm: (y0 + y1) / 2, zMm: building.groundZMm + level.heightMm };
    const at = axis === "x" ? { ...centre, yMm: centre.yMm + off } : { ...centre, xMm: centre.xMm + off };
    const along = toSite(
      { ...building.axes, xMm: 0, yMm: 0, zMm: 0 },
      axis === "x" ? { xMm: part, yMm: 0, zMm: 0 } : { xMm: 0, yMm: part, zMm: 0 },
    );
    return { kind: "point", elementId: id, at: toSite(building.axes, at), xN: along.xMm, yN: along.yMm, zN: 0 };
  });
}
