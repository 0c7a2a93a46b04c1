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
  const asked: ChartRequest = { ...framed, framedWhereNeeded: true };
  const place = { centreMm: 3029, widthMm: 900 };

  it("works as built where it is small, by the full analysis of bare edges as well", () => {
    expect(chartedOpening(plain, asked, place)).toMatchObject({ verdict: "works as built" });
    expect(verdictOf({ ...framed, framed: false }, place.widthMm)).toBe("works as built");
  });

  it("works with steel there if it is framed in any case", () => {
    expect(chartedOpening(plain, framed, place)).toMatchObject({ verdict: "works with steel" });
  });

  it("has the answer of a framed one where bare edges do not work", () => {
    const wide = { ...place, widthMm: 4500 };
    expect(chartedOpening(plain, { ...framed, framed: false }, wide)).not.toMatchObject({ verdict: "works as built" });
    const [found, alone] = [asked, framed].map((request) => chartedOpening(plain, request, wide));
    if (found === undefined || !("why" in found) || found.why.kind !== "part") throw new Error("a part decides");
    const { use, least = NaN } = found.why;
    // by another way to the same solution, so not to the last bit
    const why = { ...found.why, use: expect.closeTo(use, 9), least: expect.closeTo(least, 9) };
    expect(alone).toEqual({ ...found, why });
  });
});
