import { px, type RectPx } from "../px-path.ts";
import { seededRandom } from "../seeded-random.ts";

/** Concrete in section: small triangles and dots, the same for the same seed. */
export function concreteStipple(
  rect: RectPx,
  seed: string,
): { triangles: string; dots: readonly { xPx: number; yPx: number }[] } {
  const random = seededRandom(seed);
  const inside = (marginPx: number) => ({
    x: rect.xPx + marginPx + random() * Math.max(0, rect.widthPx - 2 * marginPx),
    y: rect.yPx + marginPx + random() * Math.max(0, rect.heightPx - 2 * marginPx),
  });
  const area = rect.widthPx * rect.heightPx;
  const triangles = Array.from({ length: Math.min(40, Math.ceil(area / 180)) }, () => {
    const { x, y } = inside(4);
    return `M${px(x)} ${px(y)}l4 -.4l-2 -3.2Z`;
  });
  const dots = Array.from({ length: Math.min(80, Math.ceil(area / 90)) }, () => {
    const { x, y } = inside(2);
    return { xPx: px(x), yPx: px(y) };
  });
  return { triangles: triangles.join(""), dots };
}
