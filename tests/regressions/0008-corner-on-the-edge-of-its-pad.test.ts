import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const onPads = (length: number, width: number, shift = 0) =>
  assess(schemeOf({ units: [a], pads: padsUnder(a).map((pad) => ({ ...pad, length, width, x: pad.x + shift })) }));

// Corner fitting 178 × 162 mm (ISO 1161, from memory). Its hole centre lies (12 192 − 11 985)/2 = 103.5 mm from the end
// and (2438 − 2259)/2 = 89.5 mm from the side, so it reaches 103.5 mm outwards and 74.5 mm inwards of the hole.
describe("a corner fitting on a pad", () => {
  it("of 50 × 50 mm is not works as built: it reaches 103.5 − 25 = 78.5 mm past it", () => {
    const assessment = onPads(50, 50);
    expect(verdictOf(assessment, "a")).toBe("not checked");
    expect(factsOf(assessment, "off-its-pad")[0]?.corners).toBe(4);
    expect(factsOf(assessment, "off-its-pad")[0]?.pastMm).toBeCloseTo(78.5, 6);
  });

  it("set 250 mm aside overhangs it on one side: 74.5 − (300 − 250) = 24.5 and 103.5 − 50 = 53.5 mm", () => {
    const assessment = onPads(600, 600, 250);
    expect(factsOf(assessment, "off-its-pad")[0]?.corners).toBe(4);
    expect(factsOf(assessment, "off-its-pad")[0]?.pastMm).toBeCloseTo(53.5, 6);
  });

  it("that just holds it, 207 × 179 mm about the hole, is works as built", () => {
    expect(verdictOf(onPads(207, 179), "a")).toBe("works as built");
    expect(verdictOf(onPads(600, 600), "a")).toBe("works as built");
  });
});
