import { elevationModel, planModel } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { elevationStrings } from "../../src/drawing/elevation/elevation-strings.ts";
import { placeLabels } from "../../src/drawing/label/place-labels.ts";
import { framedPlan } from "../../src/drawing/plan/framed-plan.ts";
import { planCircleRadiusPx } from "../../src/drawing/plan/plan-circles.ts";
import { demoScheme } from "../support/demo-scheme.ts";
import { manyUnits } from "../support/many-units.ts";

const model = elevationModel(demoScheme, "south", ["A"]);
const drawn = (pxPerM: number, storey?: number) =>
  elevationStrings(model, { originXPx: 300, originYPx: 500, pxPerM }, "SI", storey);
const textsOf = (key: string, { labels }: ReturnType<typeof drawn>) =>
  labels.filter((label) => label.key.startsWith(`${key}-`)).map(({ text }) => text);

describe("the strings of the demo's south elevation", () => {
  it("run from fitting to opening to fitting, then over the bays, then over the whole", () => {
    // by hand from the scheme: G1 is 12.192 long; D1 4.0–6.0, W1 6.8–8.4, D2 8.9–9.8, W2 10.3–11.2 from its front
    const openings = ["4.000", "2.000", "0.800", "1.600", "0.500", "0.900", "0.500", "0.900", "0.992"];
    const strings = drawn(50);
    expect(textsOf("opening", strings)).toEqual(openings);
    expect(textsOf("bay", strings)).toEqual(["3.000", "3.058", "2.476", "3.658", "3.000"]);
    expect(textsOf("overall", strings)).toEqual(["15.192"]);
    const rows = strings.lines.filter(({ upright }) => !upright).map(({ atPx }) => atPx);
    expect(rows).toEqual(rows.toSorted((a, b) => a - b));
    // 7 mm between parallel lines of dimension is common in practice, no published source; 3.8 mm of paper, 19 px, are the least here.
    for (const [at, row] of rows.slice(1).entries()) expect(row - (rows[at] ?? row)).toBeGreaterThanOrEqual(19);
  });

  it("are those of the storey that is cut", () => {
    // by hand: F1 from 3.0; W3 1.3–2.7, D3 4.6–6.1, W4 9.9–11.3 from its front
    expect(textsOf("opening", drawn(50, 1))).toEqual(["1.300", "1.400", "1.900", "1.500", "3.800", "1.400", "0.892"]);
  });

  it("leave out a string whose figures have no room, and draw no line for it", () => {
    const small = drawn(12);
    expect(textsOf("opening", small)).toEqual([]);
    expect(small.lines.some(({ key }) => key === "opening")).toBe(false);
    expect(textsOf("overall", small)).toEqual(["15.192"]);
  });
});

describe("the strings of a plan with narrow bays", () => {
  const scheme = manyUnits(24, 7);
  const view = { originXPx: 200, originYPx: 500, pxPerM: 12.5 };
  const framed = framedPlan(planModel(scheme, 0), { scheme, view, revisionLetters: [], units: "SI" });

  it("stand outside of it, a second row over the first, and the circles beyond", () => {
    const { outline, strings, circlePlaces } = framed;
    if (outline === null) throw new Error("the building has a plan");
    const placed = placeLabels(strings.labels, []);
    const bays = placed.filter(({ key }) => key.startsWith("bay-"));
    expect(new Set(bays.map(({ spot }) => spot.yPx)).size).toBe(2);
    for (const { box } of bays) expect(box.bottom).toBeLessThan(outline.top);
    for (const { box } of placed.filter(({ key }) => key.startsWith("row-")))
      expect(box.right).toBeLessThan(outline.left);
    expect(Math.min(...bays.map(({ box }) => box.top))).toBeGreaterThan(circlePlaces.topPx + planCircleRadiusPx);
  });
});
