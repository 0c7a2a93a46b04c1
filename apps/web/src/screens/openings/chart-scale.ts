import type { ChartColumn, ChartSide } from "@cornerway/engine";

/** Where the chart and the wall below it stand on the field, px; one scale along, another for widths. */
export type ChartScale = {
  readonly leftPx: number;
  readonly pxPerMm: number;
  readonly topPx: number;
  /** The line of no width. */
  readonly basePx: number;
  readonly mostMm: number;
  readonly wallTopPx: number;
  readonly wallFootPx: number;
  readonly xPx: (alongMm: number) => number;
  readonly yPx: (widthMm: number) => number;
  readonly upPx: (heightMm: number) => number;
};

const LEFT_PX = 54;
const RIGHT_PX = 26;
const TOP_PX = 66;
/** Between the chart and the wall it stands on, for its figures. */
const BETWEEN_PX = 52;
const FOOT_PX = 104;
const LEAST_CHART_PX = 120;

export function chartScale(side: ChartSide, mostMm: number, widthPx: number, heightPx: number): ChartScale {
  const byWidth = (widthPx - LEFT_PX - RIGHT_PX) / side.lengthMm;
  const byHeight = (heightPx - TOP_PX - BETWEEN_PX - FOOT_PX - LEAST_CHART_PX) / side.heightMm;
  const pxPerMm = Math.max(0.01, Math.min(byWidth, byHeight));
  const wallFootPx = heightPx - FOOT_PX;
  const wallTopPx = wallFootPx - side.heightMm * pxPerMm;
  const basePx = wallTopPx - BETWEEN_PX;
  const pxPerWidth = (basePx - TOP_PX) / mostMm;
  return {
    ...{ leftPx: LEFT_PX, pxPerMm, topPx: TOP_PX, basePx, mostMm, wallTopPx, wallFootPx },
    xPx: (alongMm) => LEFT_PX + alongMm * pxPerMm,
    yPx: (widthMm) => basePx - Math.min(widthMm, mostMm) * pxPerWidth,
    upPx: (heightMm) => wallFootPx - heightMm * pxPerMm,
  };
}

const STEP_MM = 500;
const LEAST_MM = 2000;

/** Widths that are drawn: half as much again as any that is less than out of the question. The table has them all. */
export function shownWidthMm(columns: readonly ChartColumn[], drawnMm: number): number {
  const reached = columns.flatMap(({ stretches }) =>
    stretches.flatMap(({ verdict, toMm }) => (verdict === "does not work" ? [] : [toMm])),
  );
  const most = Math.max(0, ...columns.map((column) => column.mostMm));
  const wanted = Math.max(LEAST_MM, 1.5 * Math.max(0, drawnMm, ...reached));
  return Math.ceil(Math.min(Math.max(most, LEAST_MM), wanted) / STEP_MM) * STEP_MM;
}
