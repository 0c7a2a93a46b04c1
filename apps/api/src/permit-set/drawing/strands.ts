import { project, type ElevationModel, type RunForces, type Side } from "@cornerway/engine";
import type { Ink } from "../paper/ink.ts";
import { path, polygonD, type At } from "../paper/shapes.ts";
import type { View } from "../paper/view.ts";
import { strokeWidth } from "./load-strokes.ts";

/** Shares of the load on their way through the sheets of the faces seen, as wide as their force. */
export function strandsInk({ strands }: RunForces, side: Side, { faces }: ElevationModel, view: View): Ink[] {
  const shown = new Set(faces.filter(({ beyond }) => !beyond).map(({ container, face }) => `${container.id} ${face}`));
  return strands
    .filter(({ unitId, wall }) => shown.has(`${unitId} ${wall}`))
    .map(({ forceKn, points }) =>
      path(
        ribbonD(
          points.map((at) => view.toPaper(project(side, at))),
          strokeWidth(forceKn, view),
        ),
        { fill: "ink" },
      ),
    );
}

/** A curve with a width: both its edges, closed. */
function ribbonD(way: readonly At[], width: number): string {
  const [left, right]: [At[], At[]] = [[], []];
  way.forEach((at, n) => {
    const before = way[n - 1] ?? at;
    const after = way[n + 1] ?? at;
    const [dx, dy] = [after.x - before.x, after.y - before.y];
    const long = Math.sqrt(dx * dx + dy * dy) || 1;
    const aside = { x: (-dy / long) * (width / 2), y: (dx / long) * (width / 2) };
    left.push({ x: at.x + aside.x, y: at.y + aside.y });
    right.push({ x: at.x - aside.x, y: at.y - aside.y });
  });
  return polygonD([...left, ...right.toReversed()]);
}
