import { describe, expect, it } from "vitest";
import type { Opening } from "@cornerway/schema";
import { seismicStoreys } from "../../src/loads/seismic-storeys.ts";
import { basis, framed } from "./building-actions.ts";
import { idOf, sampleScheme } from "./sample-scheme.ts";

/** Two 20 ft units in a row and a third beside the first: an L of 12 116 × 4876 mm with 6058 × 2438 mm missing. */
const ell = sampleScheme([
  { type: "1CC", xMm: 3029, yMm: 1219, zMm: 0 },
  { type: "1CC", xMm: 9087, yMm: 1219, zMm: 0 },
  { type: "1CC", xMm: 3029, yMm: 3657, zMm: 0 },
]);
const weights = new Map([1, 2, 3].map((number) => [idOf(number), 20_000]));
const none = () => [];

describe("seismicStoreys", () => {
  it("find the outline, the mass and its centre", () => {
    const [storey] = seismicStoreys(ell, framed(ell), weights, none);
    expect(storey).toMatchObject({
      heightMm: 2591,
      weightN: 60_000,
      outline: { x0Mm: 0, x1Mm: 12_116, y0Mm: 0, y1Mm: 4876 },
      diaphragmMm2: expect.closeTo(3 * 6058 * 2438, 0),
    });
    expect(storey?.centreXMm).toBeCloseTo((3029 + 9087 + 3029) / 3, 6);
    expect(storey?.centreYMm).toBeCloseTo((1219 + 1219 + 3657) / 3, 6);
  });

  // 6058/12116 = 0.5 and 2438/4876 = 0.5, both over 15 %
  it("find the re-entrant corner of an L, which the code calls irregular", () => {
    const storeys = seismicStoreys(ell, framed(ell), weights, none);
    expect(storeys[0]).toMatchObject({ reentrantXMm: 6058, reentrantYMm: 2438 });
    expect(basis.seismic.irregularities("D", storeys).map(({ kind, value }) => [kind, value])).toEqual([
      ["re-entrant corner", 0.5],
    ]);
  });

  it("find none in a row", () => {
    const row = { ...ell, containers: ell.containers.slice(0, 2) };
    expect(seismicStoreys(row, framed(row), weights, none)[0]).toMatchObject({ reentrantXMm: 0, reentrantYMm: 0 });
  });

  it("count holes in the roofs and units askew", () => {
    const hatch: Opening = {
      id: "h",
      tag: "H",
      containerId: idOf(1),
      face: "roof",
      use: "hatch",
      offsetUm: 1_000_000,
      sillUm: 500_000,
      widthUm: 3_000_000,
      heightUm: 1_000_000,
      framed: true,
    };
    const holed = { ...ell, openings: [hatch] };
    expect(seismicStoreys(holed, framed(holed), weights, none)[0]?.holesMm2).toBe(3e6);
    const askew = sampleScheme([
      { type: "1CC", xMm: 0, yMm: 0, zMm: 0 },
      { type: "1AA", xMm: 0, yMm: 9000, zMm: 0, turn: 20 },
      { type: "1AA", xMm: 0, yMm: 18_000, zMm: 0, turn: 20 },
    ]);
    expect(seismicStoreys(askew, framed(askew), weights, none)[0]?.skewedLines).toBe(1);
  });
});
