import type { ChartSide } from "@cornerway/engine";
import type { Opening } from "@cornerway/schema";
import type { ChartScale } from "./chart-scale.ts";

type Spot = { readonly xPx: number; readonly yPx: number };

/** What an opening takes of the chart: along its own length any width, to either side every width that would reach it. */
export type TakenPlace = {
  readonly opening: Opening;
  /** Middle of the opening along the wall, px. */
  readonly footPx: number;
  readonly corners: readonly Spot[];
};

/** Only openings at the height of the one that is tried stand in its way; `sill` its foot and head, mm. */
export function takenGround(
  { others }: Pick<ChartSide, "others">,
  sill: { readonly fromMm: number; readonly toMm: number },
  scale: ChartScale,
): TakenPlace[] {
  return others.flatMap((opening): TakenPlace[] => {
    const [fromMm, toMm] = [opening.offsetUm / 1000, (opening.offsetUm + opening.widthUm) / 1000];
    const [footMm, headMm] = [opening.sillUm / 1000, (opening.sillUm + opening.heightUm) / 1000];
    if (footMm >= sill.toMm || headMm <= sill.fromMm) return [];
    // an opening as wide as w, centred w / 2 from an edge, just reaches it
    const corners = trapezoid(scale, [fromMm, toMm], scale.mostMm, scale.mostMm / 2);
    return [{ opening, footPx: scale.xPx((fromMm + toMm) / 2), corners }];
  });
}

/** Places and widths that leave the corner posts whole. */
export function betweenPosts({ sheet, lengthMm }: ChartSide, scale: ChartScale): Spot[] {
  const mostMm = Math.min(scale.mostMm, lengthMm);
  return trapezoid(scale, [sheet.u0, sheet.u1], mostMm, -mostMm / 2);
}

/** From the line of no width, `from` to `to`, up to `widthMm`, where it reaches further by `reachMm` to either side. */
function trapezoid(
  scale: ChartScale,
  [fromMm, toMm]: readonly [number, number],
  widthMm: number,
  reachMm: number,
): Spot[] {
  return [
    { xPx: scale.xPx(fromMm), yPx: scale.yPx(0) },
    { xPx: scale.xPx(toMm), yPx: scale.yPx(0) },
    { xPx: scale.xPx(toMm + reachMm), yPx: scale.yPx(widthMm) },
    { xPx: scale.xPx(fromMm - reachMm), yPx: scale.yPx(widthMm) },
  ];
}
