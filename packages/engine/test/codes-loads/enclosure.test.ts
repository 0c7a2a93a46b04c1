import { describe, expect, it } from "vitest";
import { classifyEnclosure } from "../../src/codes/loads/asce7/wind/enclosure.ts";
import { windDirections, type Envelope } from "../../src/loads/wind-shape.ts";

/** One 40 ft unit: long sides ±y of 35.3 m², ends ±x of 7.06 m², roof 29.7 m². Openings and doors by side, m². */
const envelope = (
  open: Partial<Record<string, number>>,
  doors: Partial<Record<string, number>> = {},
  roof = 0,
): Envelope => ({
  sides: windDirections.map((side) => ({
    side,
    grossM2: side.endsWith("y") ? 35.308 : 7.0604,
    openM2: open[side] ?? 0,
    doorsM2: doors[side] ?? 0,
  })),
  roof: { grossM2: 29.724, openM2: roof },
});
const classOf = (of: Envelope) => classifyEnclosure("2016", of);

// ASCE 7 26.2, from memory: open: every wall 80 % open; partially enclosed: A_o > 1.1 A_oi, A_o > min(4 ft², 1 %), A_oi ≤ 20 % of A_gi.
describe("classifyEnclosure", () => {
  it("calls a box without openings enclosed", () => {
    expect(classOf(envelope({}))).toMatchObject({ closed: "enclosed", governing: "enclosed", coefficient: 0.18 });
  });

  // 10 m² of 35.3: > 1.1·0, > min(0.37, 0.353), elsewhere 0 ≤ 20 %
  it("calls a box with one long side cut open partially enclosed, 0.55", () => {
    expect(classOf(envelope({ "+y": 10 }))).toMatchObject({ governing: "partially enclosed", coefficient: 0.55 });
  });

  it("finds the box whose end doors stand open partially enclosed, though it is enclosed with them closed", () => {
    expect(classOf(envelope({}, { "+x": 5.2 }))).toMatchObject({
      closed: "enclosed",
      doorsOpen: "partially enclosed",
      governing: "partially enclosed",
      coefficient: 0.55,
    });
  });

  // Both long sides open 10 m²: 10 > 1.1·10 fails on each; too open for enclosed
  it("calls a box open alike on both long sides partially open, 0.18", () => {
    expect(classOf(envelope({ "+y": 10, "-y": 10 }))).toMatchObject({ governing: "partially open", coefficient: 0.18 });
  });

  it("calls a canopy open on all four sides open, 0", () => {
    expect(classOf(envelope({ "+x": 6, "-x": 6, "+y": 30, "-y": 30 }))).toMatchObject({
      governing: "open",
      coefficient: 0,
    });
  });

  // 0.3 m² on a long side: under 1 % of it (0.353): nothing happens; on an end 1 % is 0.0706 m²: it counts
  it("lets small openings pass up to 1 % of their wall or 0.37 m², whichever is less", () => {
    expect(classOf(envelope({ "+y": 0.3 })).governing).toBe("enclosed");
    expect(classOf(envelope({ "+x": 0.3 })).governing).toBe("partially enclosed");
  });

  // 20 m² on +y; elsewhere 17 m² of roof (hatch): 17/(35.3 + 14.1 + 29.7 = 79.15) = 21.5 % > 20 %: not partially enclosed
  it("counts openings in the roof among those elsewhere", () => {
    expect(classOf(envelope({ "+y": 20 }, {}, 15)).governing).toBe("partially enclosed"); // 15/79.15 = 19 %
    expect(classOf(envelope({ "+y": 20 }, {}, 17)).governing).toBe("partially open");
  });
});
