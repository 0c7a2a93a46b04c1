import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { oneRun, ownWeight } from "./one-run.ts";

/**
 * By hand: HSS4x4x1/4 (101.6 mm) on a plate of 201.6 mm square, 20 mm thick, on a pad of 1.2 m: it stands out
 * (201.6 − 0.95 · 101.6)/2 = 52.54 mm beyond the lines of bending, so φ P_n = 0.9 F_y t² B N / 2 l² (AISC Design Guide 1, from
 * memory); concrete of 17.2 MPa bears 0.65 · 1.7 f'c A_1, the pad being more than twice as wide (J8).
 */
describe("the plate under a post of a 40 ft unit with its side out", () => {
  const scheme = drawnUnit({
    openings: [{ face: "right", framed: false, use: "open-wall", fromMm: 200, widthMm: 11_792 }],
    posts: [4000, 8000],
  });
  const { worsts } = oneRun(scheme, [ownWeight(scheme, 200_000)]);
  const plates = worsts.filter(({ part }) => part.place.endsWith("stated plate"));

  it("is checked at every post", () => {
    expect(plates.map(({ part }) => part.place).toSorted()).toEqual([
      "foot of C1, stated plate",
      "foot of C2, stated plate",
    ]);
  });

  it("bends and presses the concrete as by hand", () => {
    const [plate] = plates;
    if (plate === undefined) throw new Error("a plate is checked");
    const { screened } = governingOf(plate);
    const forceN = screened.forceN ?? 0;
    expect(forceN).toBeGreaterThan(20_000);
    const side = 101.6 + 100;
    const out = (side - 0.95 * 101.6) / 2;
    const bent = (0.9 * steels.plate.fyMpa * 20 * 20 * side * side) / (2 * out * out);
    const pressed = 0.65 * 1.7 * 17.2 * side * side;
    const uses = screened.checks().map((check) => [check.limitState, check.ok ? check.utilisation : Infinity]);
    expect(uses).toEqual([
      ["plate bending", expect.closeTo(forceN / bent, 6)],
      ["bearing on concrete", expect.closeTo(forceN / pressed, 6)],
    ]);
  });
});
