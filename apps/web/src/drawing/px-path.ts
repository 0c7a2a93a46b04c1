/** Px written with two decimals at most: a tenth of what the eye sees, and short attributes. */
export const px = (value: number): number => Math.round(value * 100) / 100;

export type RectPx = { xPx: number; yPx: number; widthPx: number; heightPx: number };

export const linePath = (x1: number, y1: number, x2: number, y2: number): string =>
  `M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}`;

export const polygonPath = (points: readonly { xPx: number; yPx: number }[]): string =>
  `M${points.map(({ xPx, yPx }) => `${px(xPx)} ${px(yPx)}`).join("L")}Z`;

export const rectPath = ({ xPx, yPx, widthPx, heightPx }: RectPx): string =>
  `M${px(xPx)} ${px(yPx)}h${px(widthPx)}v${px(heightPx)}h${px(-widthPx)}Z`;

export const inset = (rect: RectPx, byPx: number): RectPx => ({
  xPx: rect.xPx + byPx,
  yPx: rect.yPx + byPx,
  widthPx: Math.max(0, rect.widthPx - 2 * byPx),
  heightPx: Math.max(0, rect.heightPx - 2 * byPx),
});

export const polylinePath = (points: readonly { xPx: number; yPx: number }[]): string =>
  `M${points.map(({ xPx, yPx }) => `${px(xPx)} ${px(yPx)}`).join("L")}`;
