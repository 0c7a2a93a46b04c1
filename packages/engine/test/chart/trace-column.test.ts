import { describe, expect, it } from "vitest";
import type { ChartAnswer, ChartColumn } from "../../src/chart/chart.ts";
import { tracedColumn } from "../../src/chart/trace-column.ts";
import { tracedRuns } from "../../src/chart/traced-runs.ts";

// Answers made by hand: a part whose use grows with the square of the width, 1 at a width told, as of a rail over an opening under
// an even load (M = q·l²/8). It works up to there, needs the engineer up to a use of 1.1, and does not work beyond.

const LENGTH_MM = 12_192;

const answerOf =
  (worksToMm: number) =>
  (widthMm: number): ChartAnswer => {
    const use = (widthMm / worksToMm) ** 2;
    const [run, partId] = ["1.2D + 1.6L", "rail"];
    if (use <= 1) return { verdict: "works with steel", why: { kind: "within", partId, use, run } };
    const why = { kind: "part", because: "over", partId, use, least: use / 1.1, run, assumptions: "first" } as const;
    return { verdict: use <= 1.1 ? "needs the engineer" : "does not work", why };
  };

function traced(centreMm: number, worksToMm: number, near: readonly ChartColumn[]) {
  const asked: number[] = [];
  const column = tracedColumn(
    centreMm,
    LENGTH_MM,
    (widthMm) => {
      asked.push(widthMm);
      return answerOf(worksToMm)(widthMm);
    },
    () => undefined,
    { near, easiest: "works with steel" },
  );
  return { column, asked };
}

const seen = ({ stretches }: ChartColumn) => stretches.map(({ fromMm, toMm, verdict }) => [fromMm, toMm, verdict]);

describe("a column of a chart", () => {
  // 2000·√1.1 = 2097.6
  const stretches = [
    [300, 2000, "works with steel"],
    [2050, 2050, "needs the engineer"],
    [2100, 6000, "does not work"],
  ];

  it("ends each stretch where the answer changes, to the step of 50 mm", () => {
    expect(seen(traced(3000, 2000, []).column)).toEqual(stretches);
  });

  it("ends them there whatever the column beside it says", () => {
    for (const besideMm of [400, 1950, 2000, 2050, 5000]) {
      const beside = traced(2400, besideMm, []).column;
      expect(seen(traced(3000, 2000, [beside]).column)).toEqual(stretches);
    }
  });

  it("asks few widths where the columns on either side tell where to look", () => {
    const [before, after] = [traced(2400, 1700, []).column, traced(3600, 2500, []).column];
    const { column, asked } = traced(3000, 2000, [before, after]);
    expect(seen(column)).toEqual(stretches);
    expect(new Set(asked).size).toBeLessThanOrEqual(6);
    expect(asked.length).toBeLessThan(traced(3000, 2000, []).asked.length);
  });
});

describe("runs of one verdict", () => {
  it("keep an island that is asked for, and find both its ends", () => {
    const verdictAt = (step: number): ChartAnswer => answerOf(1000)(step >= 10 && step <= 14 ? 1200 : 900); // works but between 10 and 14
    const runs = tracedRuns([0, 12, 30], verdictAt);
    expect(runs.map(({ from, to }) => [from, to])).toEqual([
      [0, 9],
      [10, 14],
      [15, 30],
    ]);
  });
});
