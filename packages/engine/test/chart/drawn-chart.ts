import type { Scheme } from "@cornerway/schema";
import type { ChartFineness, ChartRequest, ChartStep, OpeningChart } from "../../src/chart/chart.ts";
import { openingChart } from "../../src/opening-chart.ts";

/** A door of 2.2 m above a sill of 180 mm, framed with the stated set, in the right side of the first unit. */
export const doorRequest: ChartRequest = {
  containerId: "u1",
  face: "right",
  sillUm: 180_000,
  heightUm: 2_200_000,
  use: "door",
  framed: true,
};

type ColumnStep = Extract<ChartStep, { kind: "column" }>;

/** A chart drawn to its end, with the steps it came in. */
export function drawnChart(
  scheme: Scheme,
  request: ChartRequest,
  fineness: ChartFineness,
): { readonly chart: OpeningChart; readonly steps: readonly ColumnStep[] } {
  const tracing = openingChart(scheme, request, fineness);
  const steps: ColumnStep[] = [];
  for (;;) {
    const next = tracing.next();
    if (next.done !== true) {
      if (next.value.kind === "column") steps.push(next.value);
    } else if (next.value.accepted) return { chart: next.value.chart, steps };
    else throw new Error("the sample's hazards are accepted");
  }
}
