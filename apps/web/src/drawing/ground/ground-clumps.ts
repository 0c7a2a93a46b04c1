import { seededRandom } from "../seeded-random.ts";
import { linePath, px } from "../px-path.ts";

/** The hatch of cut ground: three clumps in turn, five strokes leaning left, four leaning right, stones. */
export type GroundClumps = { strokes: string; stones: readonly { xPx: number; yPx: number }[] };

const turnPx = 73;
const strokeStepPx = 4.2;

export function groundClumps(fromPx: number, toPx: number, groundPx: number): GroundClumps {
  const random = seededRandom("ground");
  const strokes: string[] = [];
  const stones: { xPx: number; yPx: number }[] = [];
  for (let x = fromPx; x < toPx - 12; x += turnPx) {
    for (let at = 0; at < 5; at += 1) strokes.push(leaning(x + 10 + at * strokeStepPx, groundPx + 2, -8, toPx));
    for (let at = 0; at < 4; at += 1) strokes.push(leaning(x + 30 + at * strokeStepPx, groundPx + 3, 7, toPx));
    for (let at = 0; at < 7; at += 1) {
      const stone = { xPx: px(x + 53 + random() * 19), yPx: px(groundPx + 3 + random() * 7) };
      if (stone.xPx < toPx) stones.push(stone);
    }
  }
  return { strokes: strokes.join(""), stones };
}

const leaning = (xPx: number, yPx: number, leanPx: number, toPx: number): string =>
  xPx + leanPx > toPx ? "" : linePath(xPx, yPx, xPx + leanPx, yPx + 8 - (leanPx > 0 ? 1 : 0));
