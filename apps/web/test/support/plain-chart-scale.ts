import type { ChartScale } from "../../src/screens/openings/chart-scale.ts";

/** A pixel for a millimetre, widths upwards from 3000. */
export const plainChartScale: ChartScale = {
  ...{ leftPx: 0, pxPerMm: 1, topPx: 0, basePx: 3000, mostMm: 3000, wallTopPx: 3000, wallFootPx: 6000 },
  xPx: (mm) => mm,
  yPx: (mm) => 3000 - mm,
  upPx: (mm) => 6000 - mm,
};
