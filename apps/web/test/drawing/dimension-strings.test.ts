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
    // by hand from the scheme: G1 is 12.192 long; D1 0.7–2.7, W1 4.4–6.8, D2 8.0–9.0, W2 9.5–11.0 from its front
    const openings = ["0.700", "2.000", "1.700", "2.400", "1.200", "1.000", "0.500", "1.500", "1.192"];
    const strings = drawn(50);
    expect(textsOf("opening", strings)).toEqual(openings);
    expect(textsOf("bay", strings)).toEqual(["3.000", "3.058", "2.476", "3.658", "3.000"]);
    expect(textsOf("overall", strings)).toEqual(["15.192"]);
    const rows = strings.lines.filter(({ upright }) => !upright).map(({ atPx }) => atPx);
    expect(rows).toEqual(rows.toSorted((a, b) => a - b));
  });

  it("are those of the storey that is cut", () => {
    // by hand: F1 from 3.0; W3 0.7–2.7, D3 4.5–6.4, W4 9.9–11.6 from its front
    expect(textsOf("opening", drawn(50, 1))).toEqual(["0.700", "2.000", "1.800", "1.900", "3.500", "1.700", "0.592"]);
  });

  it("leave out a string whose figures have no room, and draw no line for it", () => {
    const small = drawn(12);
    expect(textsOf("opening", small)).toEqual([]);
    expect(small.lines.some(({ key }) => key === "opening")).toBe(false);
    expect(textsOf("overall", small)).toEqual(["15.192"]);
  });
});
