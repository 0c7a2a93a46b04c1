import { describe, expect, it } from "vitest";
import type { Opening } from "@cornerway/schema";
import { containerDimensions } from "../../src/catalog/container-dimensions.ts";
import { caseResultant } from "../../src/loads/case-resultant.ts";
import { lifting } from "../../src/loads/lifting.ts";
import { sheetMassKg } from "../../src/loads/sheet-mass.ts";
import { framed } from "./building-actions.ts";
import { idOf, sampleInputs, sampleScheme } from "./sample-scheme.ts";

const window: Opening = {
  id: "o",
  tag: "W1",
  containerId: idOf(1),
  face: "left",
  use: "window",
  offsetUm: 4_000_000,
  sillUm: 900_000,
  widthUm: 3_000_000,
  heightUm: 1_500_000,
  framed: true,
};
const scheme = { ...sampleScheme([{ type: "1AAA", xMm: 0, yMm: 0, zMm: 0 }]), openings: [window] };
const [container] = scheme.containers;
const steel = { elementId: "frame", containerId: idOf(1), weightN: 2000, at: { xMm: 0, yMm: 0, zMm: 1448 } };
const inputs = sampleInputs({ addedSteel: [steel] });

/*
 * By hand: tare 4200·9.81 = 41 202 N; the window takes out 3.0·1.5 m² of 1.6 mm sheet, 1.0643 long: 4.5·0.0016·7850·1.0643·9.81 = 590.1 N; frame 2000 N.
 * Times 2.0: 2·(41 202 − 590.1 + 2000) = 85 224 N; two diagonal fittings 42 612 N each; legs at 60°: 42 612/sin 60° = 49 204 N.
 */
describe("lifting", () => {
  const lift = () => {
    if (container === undefined) throw new Error("the sample has a container");
    return (degrees: number, equalised = false) =>
      lifting(scheme, container, inputs, { legDegrees: degrees, equalised });
  };

  it("takes twice the real weight at the pick: tare less cuts plus steel", () => {
    expect(lift()(90).weight.result.value).toBeCloseTo(85_224, -1);
    expect(lift()(90).weight.certainty).toBe("common practice");
  });

  // 1 m²: side 0.0016·7850·1.0643 = 13.368 kg, end 0.002·7850·1.2482 = 19.597, roof 0.002·7850·1.1017 = 17.297 kg; doors and floors nothing
  it("takes off the sheet of the face that is cut", () => {
    const square = (face: Opening["face"]) =>
      sheetMassKg(containerDimensions("1AAA"), { ...window, face, widthUm: 1_000_000, heightUm: 1_000_000 });
    expect((["left", "right", "front", "roof", "door", "floor"] as const).map(square)).toEqual([
      expect.closeTo(13.368, 2),
      expect.closeTo(13.368, 2),
      expect.closeTo(19.597, 2),
      expect.closeTo(17.297, 2),
      0,
      0,
    ]);
  });

  it("hangs all of it on either diagonal pair", () => {
    const { fittingForces, cases } = lift()(90);
    expect(fittingForces.map(({ result }) => result.value)).toEqual([
      expect.closeTo(42_612, -1),
      expect.closeTo(42_612, -1),
    ]);
    expect(cases.map(({ id }) => id)).toEqual([
      `lift ${idOf(1)} front-right and door-left`,
      `lift ${idOf(1)} front-left and door-right`,
    ]);
  });

  it("loads sloping legs by one over the sine, and four where rigging equalises", () => {
    expect(lift()(60).fittingForces[0]?.result.value).toBeCloseTo(49_204, -1);
    expect(lift()(90, true).fittingForces[0]?.result.value).toBeCloseTo(21_306, -1);
  });

  it("is in equilibrium, with sloping legs too", () => {
    const placed = framed(scheme).boxes.map((box) => box.placed);
    for (const action of [...lift()(90).cases, ...lift()(55).cases]) {
      const sum = caseResultant(action, placed, { xMm: 0, yMm: 0, zMm: 2896 });
      for (const part of [sum.xN, sum.yN, sum.zN]) expect(Math.abs(part)).toBeLessThan(1e-6);
      for (const part of [sum.aboutXNmm, sum.aboutYNmm, sum.aboutZNmm]) expect(Math.abs(part)).toBeLessThan(1e-2);
    }
  });
});
