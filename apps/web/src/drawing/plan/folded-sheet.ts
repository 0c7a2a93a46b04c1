import { onWall, type PlanWall, type WallRun } from "@cornerway/engine";
import { polylinePath } from "../px-path.ts";
import { toScreen, type ViewTransform } from "../view-transform.ts";

/** Depth of the folds drawn, px: fuller than true, so that a cut wall reads as folded sheet. */
const depthPx = 1.7;

/** The folded sheet of one run of a wall: pitch true, folds on the side away from the outside. */
export function foldedSheet(wall: PlanWall, run: WallRun, view: ViewTransform): string {
  const deepMm = (depthPx * 1000) / view.pxPerM;
  const quarter = wall.pitchMm / 4;
  const points = [onWall(wall, run.fromMm)];
  for (let at = run.fromMm; at + wall.pitchMm <= run.toMm + 1; at += wall.pitchMm) {
    points.push(
      onWall(wall, at + quarter, 0),
      onWall(wall, at + 2 * quarter, deepMm),
      onWall(wall, at + 3 * quarter, deepMm),
      onWall(wall, at + wall.pitchMm, 0),
    );
  }
  points.push(onWall(wall, run.toMm));
  return polylinePath(points.map((point) => toScreen(view, point)));
}
