import type { BuildingFrame, UnitBox } from "./building-frame.ts";
import { exposedFaces } from "./exposed-faces.ts";
import type { BuildingForm } from "./shape-limit.ts";
import { areaOf, uncovered } from "./uncovered.ts";
import type { WindShape } from "./wind-shape.ts";

/** The enclosing box the wind meets. */
export const windShapeOf = ({ outline, groundZMm }: BuildingFrame): WindShape => ({
  lengthXMm: outline.x1 - outline.x0,
  lengthYMm: outline.y1 - outline.y0,
  heightMm: outline.z1 - groundZMm,
});

/** What decides whether the procedure's shape limits hold. */
export function buildingForm(building: BuildingFrame): BuildingForm {
  const { outline, boxes } = building;
  const plan = { u0: outline.x0, u1: outline.x1, v0: outline.y0, v1: outline.y1 };
  const outside = uncovered(
    plan,
    boxes.map(({ x0, x1, y0, y1 }) => ({ u0: x0, u1: x1, v0: y0, v1: y1 })),
  );
  const exposed = exposedFaces(building);
  const roofs = exposed.filter(({ side }) => side === "up").map(({ atMm }) => atMm);
  const soffits = exposed.filter(({ side }) => side === "down");
  return {
    ...windShapeOf(building),
    planFill: 1 - sum(outside.map(areaOf)) / areaOf(plan),
    roofStepMm: Math.max(...roofs) - Math.min(...roofs),
    turnedOff: boxes.filter(({ faces }) => faces === undefined).map(({ id }) => id),
    soffitShare: sum(soffits.map(({ rect }) => areaOf(rect))) / areaOf(plan),
    blocks: blockCount(boxes),
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Groups of boxes that touch or stand within the width wind does not pass, 300 mm (common practice). */
function blockCount(boxes: readonly UnitBox[]): number {
  const left = new Set(boxes);
  let blocks = 0;
  for (const start of boxes) {
    if (!left.delete(start)) continue;
    blocks += 1;
    const open = [start];
    for (let box = open.pop(); box !== undefined; box = open.pop()) {
      for (const other of [...left]) {
        if (!close(box, other)) continue;
        left.delete(other);
        open.push(other);
      }
    }
  }
  return blocks;
}

const close = (a: UnitBox, b: UnitBox): boolean =>
  a.x0 - b.x1 <= 300 &&
  b.x0 - a.x1 <= 300 &&
  a.y0 - b.y1 <= 300 &&
  b.y0 - a.y1 <= 300 &&
  a.z0 - b.z1 <= 300 &&
  b.z0 - a.z1 <= 300;
