import { px, type RectPx } from "../px-path.ts";

const arcPx = 20;

/** A revision cloud round a rectangle: arcs of about 20 px, bulging outwards, clockwise from the top left. */
export function cloudPath({ xPx, yPx, widthPx, heightPx }: RectPx): string {
  const across = Math.max(2, Math.round(widthPx / arcPx));
  const down = Math.max(2, Math.round(heightPx / arcPx));
  const side = (count: number, dx: number, dy: number) => arcTo(dx / count, dy / count).repeat(count);
  return `M${px(xPx)} ${px(yPx)}${side(across, widthPx, 0)}${side(down, 0, heightPx)}${side(across, -widthPx, 0)}${side(down, 0, -heightPx)}Z`;
}

const arcTo = (dx: number, dy: number): string => {
  const radius = px(Math.hypot(dx, dy) * 0.56);
  return `a${radius} ${radius} 0 0 1 ${px(dx)} ${px(dy)}`;
};
