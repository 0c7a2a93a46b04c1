import type { ChartColumn, ChartStretch } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { answerAt, chartRegions } from "../../src/screens/openings/chart-regions.ts";
import { plainChartScale as scale } from "../support/plain-chart-scale.ts";

const stretch = (fromMm: number, toMm: number, verdict: ChartStretch["verdict"]): ChartStretch => ({
  ...{ fromMm, toMm, verdict },
  why: { kind: "within", partId: "u1 jamb right", use: 0.5, run: "1.4D" },
});
/** Nothing is said below the narrowest width judged, 300 mm. */
const column = (centreMm: number, worksToMm: number): ChartColumn => ({
  centreMm,
  mostMm: 2000,
  stretches: [stretch(300, worksToMm, "works with steel"), stretch(worksToMm + 50, 2000, "does not work")],
});
describe("regions of the chart", () => {
  it("run straight from one traced place to the next, edges halfway between the widths judged", () => {
    const regions = chartRegions([column(1000, 900), column(2000, 1300)], scale);
    const over = regions.find(({ verdict }) => verdict === "does not work");
    expect(over?.edge).toBe("M1000 2075L2000 1675"); // 3000 − 925, 3000 − 1325
  });

  it("are drawn where a rail would be cut from the narrowest on, and end at the line of a corner post", () => {
    const cut = (member: "top side rail" | "corner post"): ChartStretch => ({
      ...{ fromMm: 300, toMm: 2000, verdict: "does not work" },
      why: { kind: "member cut", member },
    });
    const through = (member: Parameters<typeof cut>[0]) =>
      [1000, 2000].map((centreMm): ChartColumn => ({ centreMm, mostMm: 2000, stretches: [cut(member)] }));
    expect(chartRegions(through("top side rail"), scale)).toEqual([
      { verdict: "does not work", area: "M1000 2700L2000 2700L2000 1000L1000 1000Z", edge: "M1000 2700L2000 2700" },
    ]);
    expect(chartRegions(through("corner post"), scale)).toEqual([]);
  });

  it("stand each for itself, half of the way, where neighbours differ in kind: nothing is smoothed", () => {
    const bare: ChartColumn = { centreMm: 2000, mostMm: 2000, stretches: [stretch(300, 2000, "does not work")] };
    const regions = chartRegions([column(1000, 900), bare], scale);
    const works = regions.find(({ verdict }) => verdict === "works with steel");
    expect(works?.area).toBe("M1000 2700L1500 2700L1500 2075L1000 2075Z");
  });

  it("answer for a place by the nearest column and the stretch its width falls in", () => {
    const columns = [column(1000, 900), column(2000, 1300)];
    expect(answerAt(columns, { centreMm: 9000, widthMm: 1300 })).toBeNull();
    expect(answerAt(columns, { centreMm: 1600, widthMm: 1300 })?.stretch.verdict).toBe("works with steel");
    expect(answerAt(columns, { centreMm: 1400, widthMm: 1300 })?.stretch.verdict).toBe("does not work");
    expect(answerAt([], { centreMm: 1, widthMm: 1 })).toBeNull();
  });
});
