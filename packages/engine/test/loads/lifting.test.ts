import { describe, expect, it } from "vitest";
import type { Opening } from "@cornerway/schema";
import { containerDimensions } from "../../src/catalog/container-dimensions.ts";
import { caseResultant } from "../../src/loads/case-resultant.ts";
import { lifting } from "../../src/loads/lifting.ts";
import { sheetMassKg } from "../../src/loads/sheet-mass.ts";
import { framed } from "./building-actions.ts";
import { idOf, sampleScheme } from "./sample-scheme.ts";

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

/*
 * By hand: tare 4200·9.81 = 41 202 N; the window takes out 3.0·1.5 m² of 1.6 mm sheet, 1.0643 long: 4.5·0.0016·7850·1.0643·9.81 = 590.1 N; its frame of
 * tube 60×60×3 (684 mm²) is 9.0 m: 684·9.0·7850e-6·9.81 = 474.1 N.
 * Times 2.0: 2·(41 202 − 590.1 + 474.1) = 82 172 N; two diagonal fittings 41 086 N each; legs at 60°: 41 086/sin 60° = 47 442 N.
 */
describe("lifting", () => {
  const lift = () => {
    if (container === undefined) throw new Error("the sample has a container");
    return (degrees: number, equalised = false) =>
      lifting(
        {
          ...scheme,
          basis: { ...scheme.basis, lifting: { ...scheme.basis.lifting, legMdeg: degrees * 1000, equalised } },
        },
        container,
      );
  };

  it("takes twice the real weight at the pick: tare less cuts plus steel", () => {
    expect(lift()(90).weight.result.value).toBeCloseTo(82_172, -1);
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

  // 41 202·2: what is cut on site is whole at the pick, its frame not in yet
  it("lifts a unit whole whose openings are cut after placing", () => {
    if (container === undefined) throw new Error("the sample has a container");
    const later = { ...scheme, openings: [{ ...window, cut: "after placing" as const }] };
    expect(lifting(later, container).weight.result.value).toBeCloseTo(82_404, -1);
  });

  it("hangs all of it on either diagonal pair", () => {
    const { fittingForces, cases } = lift()(90);
    expect(fittingForces.map(({ result }) => result.value)).toEqual([
      expect.closeTo(41_086, -1),
      expect.closeTo(41_086, -1),
    ]);
    expect(cases.map(({ id }) => id)).toEqual([
      `lift ${idOf(1)} front-right and door-left`,
      `lift ${idOf(1)} front-left and door-right`,
    ]);
  });

  it("loads sloping legs by one over the sine, and four where rigging equalises", () => {
    expect(lift()(60).fittingForces[0]?.result.value).toBeCloseTo(47_442, -1);
    expect(lift()(90, true).fittingForces[0]?.result.value).toBeCloseTo(20_543, -1);
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
