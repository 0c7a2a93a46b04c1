import { feetAndInches, figuresIn, markSentences, readers, type Mark, type UnitSystem } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { everyFact } from "./every-fact.ts";

const mmPerSixteenth = 25.4 / 16;

describe("feetAndInches", () => {
  // By hand, 1 in = 25.4 mm exactly: 12,192 mm = 480 in; 2,438.4 mm = 96 in; 1,612.9 mm = 63.5 in; 2,896 mm = 114.016 in;
  // 304.1 mm = 191.56 sixteenths, the nearest 192; 304 mm = 191.496, the nearest 191.
  it.each([
    [12_192, `40'-0"`],
    [2438.4, `8'-0"`],
    [1612.9, `5'-3 1/2"`],
    [2896, `9'-6"`],
    [5792, `19'-0 1/16"`],
    [6.35, `1/4"`],
    [1.5875, `1/16"`],
    [304.8, `1'-0"`],
    [304.1, `1'-0"`],
    [304, `11 15/16"`],
    [303.3, `11 15/16"`],
    [0, `0"`],
    [0.5, `0"`],
    [-1612.9, `−5'-3 1/2"`],
    [-0.5, `0"`],
  ])("writes %d mm as %s", (lengthMm, text) => expect(feetAndInches(lengthMm)).toBe(text));

  it("is never more than half a sixteenth off, and never writes 12 inches", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e7, noNaN: true }), (lengthMm) => {
        const found = /^(?:(\d+)'-)?(\d+)?(?:(?:^| |-)?(\d+)\/(\d+))?"$/.exec(feetAndInches(lengthMm));
        expect(found).not.toBeNull();
        const [, feet = "0", whole = "0", over = "0", under = "1"] = found ?? [];
        expect(Number(whole)).toBeLessThan(12);
        const read = (Number(feet) * 12 + Number(whole) + Number(over) / Number(under)) * 25.4;
        expect(Math.abs(read - lengthMm)).toBeLessThanOrEqual(mmPerSixteenth / 2 + 1e-6);
      }),
    );
  });
});

describe("figuresIn", () => {
  // By hand: 113.398 kN / 4.4482216152605 = 25.493 kip; 204 kN m / (4.4482216152605 × 0.3048) = 150.46 kip-ft;
  // 3 m / 0.3048 = 9.84 ft; 18.5 mm / 25.4 = 0.7283 in = 11.65 sixteenths, the nearest 12.
  it("writes US customary units that replace the others", () => {
    const us = figuresIn("US");
    expect([us.force(113.398), us.forceExact(113.398), us.moment(204)]).toEqual([
      "25.5 kip",
      "25.49 kip",
      "150.5 kip-ft",
    ]);
    expect([us.length(3000), us.small(18.5), us.inWords(3000)]).toEqual([`9'-10 1/8"`, `3/4"`, "9.8 feet"]);
  });

  it("writes SI as before", () => {
    const si = figuresIn("SI");
    expect([si.force(113.398), si.forceExact(113.398), si.moment(204)]).toEqual(["113 kN", "113.4 kN", "204.0 kN m"]);
    expect([si.length(3000), si.small(18.5), si.small(6), si.inWords(3000)]).toEqual([
      "3.00 m",
      "18.5 mm",
      "6 mm",
      "3.0 metres",
    ]);
  });
});

describe("markSentences in each unit system", () => {
  const names = new Map([["a", "T1"]]);
  const told = (units: UnitSystem) =>
    everyFact.flatMap((fact) =>
      readers.map((reader) => {
        const mark: Mark = {
          ...{ id: "m", verdict: "not checked", certainty: "derived", elements: ["a", "b", "c"], fact },
          ...{ at: { xMm: 0, yMm: 0, zMm: 0 }, basis: "Statics." },
        };
        return markSentences(mark, names, reader, units);
      }),
    );

  it("names no unit of the other system", () => {
    for (const { body, detail = "" } of told("US"))
      expect(`${body} ${detail}`).not.toMatch(/\d (m|mm|kN|kN m|metres)\b/);
    for (const { body, detail = "" } of told("SI")) expect(`${body} ${detail}`).not.toMatch(/\d"|\d'|\d (kip|feet)\b/);
  });

  it("says the same words but for the numbers", () => {
    const bare = (text: string) =>
      text.replaceAll(/(\d+'-)?(\d+ \d+\/\d+|\d+\/\d+|\d+)"|\d+(\.\d+)? (mm|metres|feet|kN m|kip-ft|kN|kip|m)\b/g, "#");
    expect(told("US").map(({ body }) => bare(body))).toEqual(told("SI").map(({ body }) => bare(body)));
  });
});
