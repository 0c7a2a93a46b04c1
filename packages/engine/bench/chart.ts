import { readFileSync } from "node:fs";
import type { Scheme } from "@cornerway/schema";
import type { ChartRequest } from "../src/chart/chart.ts";
import { openingChart, usualFineness } from "../src/opening-chart.ts";

/** The chart of a 40 ft side of the demo: until the side is there, until its first column, until all. Cold, then warm. */
const scheme: Scheme = JSON.parse(readFileSync(new URL("../../../shared/demo/scheme.json", import.meta.url), "utf8"));
const drawn = scheme.openings.find(({ id }) => id === "d3");
if (drawn === undefined) throw new Error("the demo has an opening d3");
const request: ChartRequest = {
  containerId: drawn.containerId,
  face: "right",
  sillUm: drawn.sillUm,
  heightUm: drawn.heightUm,
  use: drawn.use,
  framed: drawn.framed,
  openingId: drawn.id,
};
const APART_MM = (process.argv[2] ?? "1600,400").split(",").map(Number);

for (const apartMm of APART_MM)
  for (const run of ["cold", "warm"]) {
    const cpu = process.cpuUsage();
    const start = performance.now();
    const at: string[] = [];
    const tracing = openingChart(scheme, request, { ...usualFineness, apartMm });
    for (let step = tracing.next(); ; step = tracing.next()) {
      const wall = (performance.now() - start).toFixed(0);
      if (step.done === true) {
        const { user } = process.cpuUsage(cpu);
        const solved = step.value.accepted ? step.value.chart.solved : 0;
        console.log(
          `columns ${apartMm} mm apart, ${run}: ${at.join(", ")}, whole ${wall} ms wall, ${(user / 1000).toFixed(0)} ms processor; ${solved} places and widths solved`,
        );
        break;
      }
      if (step.value.kind === "side") at.push(`side ${wall} ms`);
      else if (step.value.done === 1) at.push(`first column ${wall} ms`);
    }
  }
