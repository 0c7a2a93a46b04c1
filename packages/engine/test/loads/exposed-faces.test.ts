import { describe, expect, it } from "vitest";
import { exposedFaces } from "../../src/loads/exposed-faces.ts";
import { areaOf, uncovered } from "../../src/loads/uncovered.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { caseNamed, framed, sumOf, windOf } from "./building-actions.ts";
import { idOf, sampleScheme, smallBuildings, type Placed } from "./sample-scheme.ts";

const areaM2 = (placed: readonly Placed[], unit: number, side: string) =>
  exposedFaces(framed(sampleScheme(placed)))
    .filter((part) => part.unit.id === idOf(unit) && part.side === side)
    .reduce((sum, { rect }) => sum + areaOf(rect), 0) / 1e6;

const beside = (gapMm: number): readonly Placed[] => [
  { type: "1AAA", xMm: 0, yMm: 0, zMm: 0 },
  { type: "1AAA", xMm: 3000, yMm: 2438 + gapMm, zMm: 0 },
];

describe("exposedFaces", () => {
  // 3.0 · 2.896 = 8.688 m² of the north side look past the neighbour, 12.192 · 2.896 = 35.308 m² is the whole
  it("leave out what a neighbour covers, up to a gap of 300 mm", () => {
    expect(areaM2(beside(0), 1, "+y")).toBeCloseTo(8.688, 6);
    expect(areaM2(beside(299), 1, "+y")).toBeCloseTo(8.688, 6);
    expect(areaM2(beside(301), 1, "+y")).toBeCloseTo(35.308, 3);
    expect(areaM2(beside(0), 1, "-y")).toBeCloseTo(35.308, 3);
  });

  // a unit of 2.591 beside one of 2.896: 0.305 m of height stay open
  it("keep the strip a lower neighbour does not reach", () => {
    const lower: readonly Placed[] = [
      { type: "1AAA", xMm: 0, yMm: 0, zMm: 0 },
      { type: "1AA", xMm: 0, yMm: 2438, zMm: 0 },
    ];
    expect(areaM2(lower, 1, "+y")).toBeCloseTo(12.192 * 0.305, 6);
    expect(areaM2(lower, 2, "-y")).toBeCloseTo(0, 6);
  });

  it("have the underside of an overhang and no underside near the ground", () => {
    const placed = smallBuildings["an overhang of 3 m"];
    expect(areaM2(placed, 2, "down")).toBeCloseTo(3 * 2.438, 6);
    expect(areaM2(placed, 1, "down")).toBe(0);
    expect(areaM2([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 700 }], 1, "down")).toBeCloseTo(29.724, 3);
  });

  it("cover the roof under the unit that stands on it", () => {
    const placed = smallBuildings["an overhang of 3 m"];
    expect(areaM2(placed, 1, "up")).toBeCloseTo(3 * 2.438, 6);
    expect(areaM2(placed, 2, "up")).toBeCloseTo(29.724, 3);
  });
});

describe("uncovered", () => {
  it("is the whole less what overlapping covers take together", () => {
    const whole = { u0: 0, u1: 10, v0: 0, v1: 10 };
    const covers = [
      { u0: 0, u1: 6, v0: 0, v1: 6 },
      { u0: 4, u1: 8, v0: 4, v1: 12 },
    ];
    // 36 + 4·6 = 24 less the lap of 2·2 = 4: 56 covered, 44 left
    expect(uncovered(whole, covers).reduce((sum, rect) => sum + areaOf(rect), 0)).toBeCloseTo(44, 9);
    expect(uncovered(whole, [whole])).toEqual([]);
  });
});

describe("wind on the roof along both axes", () => {
  /*
   * One 40 ft unit, case 3, pressure inside. Wind +x: h/L 0.2375: −0.9 to h = 2896, −0.5 to 5792, −0.3 to 12 192; wind +y: h/L 1.188: −1.3 with the area factor of
   * 12.192·1.448 = 17.654 m² (1 − 0.1·(17.654 − 9.2903)/13.9355 = 0.93998 → −1.22198) to 1448 mm, −0.7 on the other 990 mm. The stronger of the two:
   *   windward strip: −1.22198 everywhere; behind it −0.9 on the first 2896 mm, −0.7 on the remaining 9296 mm.
   *   mean area: 1.448·12.192·1.22198 + 0.990·(2.896·0.9 + 9.296·0.7) = 21.5728 + 9.0225 = 30.595 m²
   * lift = 0.75·0.85·1169.00·30.595 = 22.800 kN; the pressure inside lifts the roof and holds the floor: nothing.
   */
  it("takes the stronger suction of the two on each piece", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const sum = sumOf(scheme, caseNamed(windOf(scheme, sampleHazards()), "W3 +x+y inside pressure"));
    expect(sum.zN / 1000).toBeCloseTo(22.8, 1);
  });

  it("takes the weaker value, −0.18, with suction inside", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const sum = sumOf(scheme, caseNamed(windOf(scheme, sampleHazards()), "W3 +x+y inside suction"));
    // 0.75·0.85·0.18·1169.00·29.7241 = 3.987 kN
    expect(sum.zN / 1000).toBeCloseTo(3.987, 2);
  });
});

describe("wind under an overhang", () => {
  // 0.68·q(5.792 m) = 0.68·1228.69 Pa on 3.0 · 2.438 m = 6.111 kN, upwards
  it("lifts its underside with the windward pressure", () => {
    const scheme = sampleScheme(smallBuildings["an overhang of 3 m"]);
    const wind = caseNamed(windOf(scheme, sampleHazards()), "W1 -x inside suction");
    const under = wind.loads.filter(
      (load) => load.kind === "against" && load.face === "floor" && load.patch.pressurePa > 500,
    );
    expect(sumOf(scheme, { ...wind, loads: under }).zN / 1000).toBeCloseTo(6.111, 2);
  });
});
