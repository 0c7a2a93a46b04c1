import { gridLetter, gridOf } from "@cornerway/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadApart } from "../../src/drawing/grid/spread-apart.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const rows = (count: number, revisions: readonly string[]) =>
  Array.from({ length: count }, (_, index) => gridLetter(index, revisions));

describe("letters of the grid", () => {
  it("skip I and O, so that no row is read as a figure", () => {
    const all = rows(60, []);
    expect(all.join("")).not.toMatch(/[IO]/);
    expect(new Set(all).size).toBe(60);
  });

  it("start at K while revisions are among the first ten", () => {
    expect(rows(7, ["A", "B", "C"])).toEqual(["K", "L", "M", "N", "P", "Q", "R"]);
  });

  it("start after the revisions in use once those reach K", () => {
    expect(rows(3, ["A", "M", "N"])).toEqual(["P", "Q", "R"]);
    expect(rows(2, ["O"])).toEqual(["P", "Q"]);
  });

  it("never share a letter with a revision that was issued in order", () => {
    const order = "ABCDEFGHIJKLMNOPQRSTUV".split("");
    fc.assert(
      fc.property(fc.integer({ min: 0, max: order.length }), (issued) => {
        const revisions = order.slice(0, issued);
        expect(rows(4, revisions).filter((letter) => revisions.includes(letter))).toEqual([]);
      }),
      { seed: 4, numRuns: 60 },
    );
  });
});

describe("the grid of the demo", () => {
  const grid = gridOf(demoScheme, ["A"]);

  it("numbers lines from west to east and letters them from north to south", () => {
    expect(grid.numbers.map(({ label }) => label)).toEqual(grid.numbers.map((_, index) => `${index + 1}`));
    expect(grid.numbers.map(({ atMm }) => atMm)).toEqual(
      grid.numbers.map(({ atMm }) => atMm).toSorted((a, b) => a - b),
    );
    expect(grid.letters[0]?.label).toBe("K");
    expect(grid.letters.map(({ atMm }) => atMm)).toEqual(
      grid.letters.map(({ atMm }) => atMm).toSorted((a, b) => b - a),
    );
  });

  it("stands on the outer faces of the units: 12.192 m between the ends of a 40 ft unit (ISO 668)", () => {
    const west = grid.numbers[0]?.atMm ?? Number.NaN;
    expect(grid.numbers.some(({ atMm }) => Math.abs(atMm - west - 12_192) < 1)).toBe(true);
  });

  it("gives the joint between two neighbours one line", () => {
    const places = grid.letters.map(({ atMm }) => atMm);
    for (const [index, atMm] of places.slice(1).entries()) expect((places[index] ?? 0) - atMm).toBeGreaterThan(160);
  });
});

describe("circles of close grid lines", () => {
  it("keep their order and their distance, and stay where they are when there is room", () => {
    const places = fc
      .array(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 15 })
      .map((list) => list.toSorted((a, b) => a - b));
    fc.assert(
      fc.property(places, (rising) => {
        const spread = spreadApart(rising, 26);
        for (const [index, place] of spread.slice(1).entries())
          expect(place - (spread[index] ?? 0)).toBeGreaterThan(26 - 1e-6);
      }),
      { seed: 5, numRuns: 300 },
    );
    expect(spreadApart([0, 100, 200], 26)).toEqual([0, 100, 200]);
  });
});
