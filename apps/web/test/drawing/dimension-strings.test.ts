import { elevationModel } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { elevationStrings } from "../../src/drawing/elevation/elevation-strings.ts";
import { demoScheme } from "../support/demo-scheme.ts";

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
