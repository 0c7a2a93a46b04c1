import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// A 20 ft unit: holes 5853 × 2259 apart, 102.5 and 89.5 from its outer faces. Tare in the middle of 2150…2400 kg.
const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const base = { units: [g1], pads: padsUnder(g1) };
const tareKn = (2275 * 9.81) / 1000;
const unitOf = (assessment: ReturnType<typeof assess>) => assessment.units[0];
const cornersKn = (assessment: ReturnType<typeof assess>) =>
  ["front-right", "front-left", "door-right", "door-left"].map(
    (name) => bearingOf(assessment, `g1:${name}`)?.forceKn ?? NaN,
  );

describe("a free load", () => {
  it("over one corner post goes nearly wholly to that corner: 20 kN at the holes of the front right corner", () => {
    const put = [{ id: "q1", in: "g1", x: 102.5, y: 89.5, downN: 20_000 }];
    // Four equal springs at (±a, ±b): P/4 · (1 + x/a + y/b) each, here 3/4, 1/4, 1/4 and −1/4 of 20 with 1/4 of the tare.
    const own = tareKn / 4;
    const [frontRight, frontLeft, doorRight, doorLeft] = cornersKn(assess(schemeOf({ ...base, put })));
    expect(frontRight).toBeCloseTo(own + 15, 2);
    expect(frontLeft).toBeCloseTo(own + 5, 2);
    expect(doorRight).toBeCloseTo(own + 5, 2);
    expect(doorLeft).toBeCloseTo(own - 5, 2);
  });

  it("adds up by its shape: 3 m at 2 kN/m is 6 kN, 2 × 1 m at 3 kPa is 6 kN, a point is itself", () => {
    const each = [
      { id: "q1", in: "g1", x: 1000, y: 1219, toX: 4000, toY: 1219, downNPerM: 2000 },
      { id: "q1", in: "g1", x: 1000, y: 500, length: 2000, width: 1000, pa: 3000 },
      { id: "q1", in: "g1", x: 1000, y: 500, downN: 6000 },
    ] as const;
    for (const load of each) expect(unitOf(assess(schemeOf({ ...base, put: [load] })))?.imposedKn).toBeCloseTo(6, 9);
  });

  it("acts at its middle: the area load lies 1 m + 1 m from the front end, 0.5 + 0.5 m from the right side", () => {
    const put = [{ id: "q1", in: "g1", x: 1000, y: 500, length: 2000, width: 1000, pa: 3000 }];
    const assessment = assess(schemeOf({ ...base, put }));
    const along = (2000 - 3029) / 2926.5;
    const across = (1000 - 1219) / 1129.5;
    const share = (x: number, y: number) => tareKn / 4 + (6 / 4) * (1 + x * along + y * across);
    const expected = [share(-1, -1), share(-1, 1), share(1, -1), share(1, 1)];
    cornersKn(assessment).forEach((force, at) => expect(force).toBeCloseTo(expected[at] ?? NaN, 2));
  });

  it("counts finishes and plant as weight, imposed load and snow as what comes and goes, wind not at all", () => {
    const of = (kind: "finish" | "plant" | "imposed" | "snow" | "wind") =>
      unitOf(assess(schemeOf({ ...base, put: [{ id: "q1", in: "g1", case: kind, x: 3029, y: 1219, downN: 8000 }] })));
    expect(of("finish")?.weightKn).toBeCloseTo(tareKn + 8, 2);
    expect(of("plant")?.weightKn).toBeCloseTo(tareKn + 8, 2);
    expect(of("imposed")?.imposedKn).toBe(8);
    expect(of("snow")?.imposedKn).toBe(8);
    expect(of("wind")).toMatchObject({ imposedKn: 0 });
    expect(of("wind")?.weightKn).toBeCloseTo(tareKn, 2);
  });

  it("on the overhanging end tips a unit that stands without it", () => {
    // Pushed 2000 mm past the unit below: the last bearing at 2926.5 − 2000 = 926.5 from its middle, the tail 2926.5 behind.
    // 30 kN a metre from its door end, 2029 from its middle: 22.3 × 926.5 < 30 × (2029 − 926.5).
    const f1 = { ...g1, id: "f1", x: 2000, z: 2591 } as const;
    const scheme = { units: [g1, f1], pads: padsUnder(g1) };
    expect(factsOf(assess(schemeOf(scheme)), "tips-over")).toEqual([]);
    const put = [{ id: "q1", in: "f1", x: 5058, y: 1219, downN: 30_000 }];
    const [tips] = factsOf(assess(schemeOf({ ...scheme, put })), "tips-over");
    // Resultant at 30 × 2029/(30 + 22.318) = 1163.5 from the middle: 236.9 outside.
    expect(tips?.outsideMm).toBeCloseTo((30 * 2029) / (30 + tareKn) - 926.5, 2);
  });

  it("drawn beside its unit does not work, and says how far past the edge it is", () => {
    const past = (x: number, y: number) =>
      factsOf(
        assess(schemeOf({ ...base, put: [{ id: "q1", in: "g1", x, y, length: 1000, width: 500, pa: 100 }] })),
        "load-off-unit",
      );
    expect(past(0, 0)).toEqual([]);
    // 5500 + 1000 − 6058 = 442; −250 to the right.
    expect(past(5500, 0).map(({ pastMm, verdict }) => [pastMm, verdict])).toEqual([[442, "does not work"]]);
    expect(past(1000, -250).map(({ pastMm }) => pastMm)).toEqual([250]);
  });
});

describe("the use of a floor", () => {
  const floorM2 = 6.058 * 2.438;

  it("takes the adopted code's load where none is drawn: dwelling 40 psf, office 50 and 15 of partitions (ASCE 7 Table 4.3-1, from memory)", () => {
    const psf = 0.04788026;
    const kn = (occupancy: "dwelling" | "office") =>
      unitOf(assess(schemeOf({ ...base, uses: [{ containerId: "g1", surface: "floor", occupancy }] })))?.imposedKn;
    expect(kn("dwelling")).toBeCloseTo(40 * psf * floorM2, 1);
    expect(kn("office")).toBeCloseTo(65 * psf * floorM2, 1);
  });

  it("gives way to an imposed load drawn on that floor, not to one on the roof, nor to finishes", () => {
    const uses = [{ containerId: "g1", surface: "floor", occupancy: "dwelling" } as const];
    const kn = (loads: Parameters<typeof schemeOf>[0]["loads"]) =>
      unitOf(assess(schemeOf({ ...base, uses, ...(loads === undefined ? {} : { loads }) })))?.imposedKn ?? NaN;
    const alone = kn([]);
    expect(kn([{ in: "g1", pa: 1000 }])).toBeCloseTo(floorM2, 3);
    expect(kn([{ in: "g1", surface: "roof", pa: 1000 }])).toBeCloseTo(alone + floorM2, 2);
    expect(kn([{ in: "g1", case: "finish", pa: 1000 }])).toBe(alone);
  });
});

describe("the weight on a container's plate", () => {
  it("stands in for the middle of its type's range", () => {
    const plated = { ...base, units: [{ ...g1, plateKg: 2360 }] };
    expect(unitOf(assess(schemeOf(plated)))?.weightKn).toBeCloseTo(2.36 * 9.81, 3);
  });
});
