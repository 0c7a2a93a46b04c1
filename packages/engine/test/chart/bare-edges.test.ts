import { describe, expect, it } from "vitest";
import type { ChartRequest } from "../../src/chart/chart.ts";
import { chartedOpening, confirmOpening } from "../../src/opening-chart.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

// One plain 20 ft unit under gravity alone, a window of 0.9 m above a sill of 0.9 m in its right side.

const plain = drawnUnit({ type: "1CC" });
const framed: ChartRequest = {
  ...{ containerId: "u1", face: "right", sillUm: 900_000, heightUm: 900_000, use: "window", framed: true },
};

const verdictOf = (request: ChartRequest, widthMm: number): string => {
  const full = confirmOpening(plain, request, { centreMm: 3029, widthMm });
  if (!full.accepted) throw new Error("the sample is accepted");
  return full.answer.verdict;
};

describe("an opening that is framed only where it must be", () => {
  it.each([900, 4500])("is the cheaper of the two that works by the full analysis, %i mm wide", (widthMm) => {
    const bare = verdictOf({ ...framed, framed: false }, widthMm);
    const expected = bare === "works as built" ? bare : verdictOf(framed, widthMm);
    const asked: ChartRequest = { ...framed, framedWhereNeeded: true };
    expect(chartedOpening(plain, asked, { centreMm: 3029, widthMm })).toMatchObject({ verdict: expected });
    expect(verdictOf(asked, widthMm)).toBe(expected);
  });

  it("works as built where it is small, which no framed one does", () => {
    const place = { centreMm: 3029, widthMm: 900 };
    expect(chartedOpening(plain, { ...framed, framedWhereNeeded: true }, place)).toMatchObject({
      verdict: "works as built",
    });
    expect(chartedOpening(plain, framed, place)).toMatchObject({ verdict: "works with steel" });
  });
});
