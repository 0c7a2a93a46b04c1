import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { ordinarySchemes, withBothEnds } from "./ordinary-schemes/ordinary-schemes.ts";

/**
 * Beside the seats of an overhang the top rail below is used most by torsion with all other forces (AISC 360 Eq. H3-6). Sheet of
 * wall and roof would hold it against turning and is not counted: what that could give is all of T. Without any T it is beyond its
 * strength by bending alone, so that nothing but a stiffener, a post or a shorter overhang helps.
 */
describe("the top rail under the seats of an overhang of 1 m", () => {
  const answer = strength(withBothEnds(ordinarySchemes["an overhang of 1 m"] ?? drawnUnit({})));
  const rails = answer.accepted
    ? answer.results.filter(
        ({ id, limitState }) => id.startsWith("unit-01 top side rail") && limitState.startsWith("torsion with"),
      )
    : [];

  it("is beyond its strength without its torsion, which is less than half of what it takes", () => {
    expect(rails.length).toBeGreaterThan(0);
    for (const { working, utilisation = 0 } of rails) {
      const of = (symbol: string): number => working?.symbols.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
      const share = (demand: string, strengthOf: string): number => of(demand) / of(strengthOf);
      const bent = share("P", "P_c") + share("M_x", "M_cx") + share("M_y", "M_cy");
      const [shear, torsion] = [share("V_x", "V_cx") + share("V_y", "V_cy"), share("T", "T_c")];
      expect(bent + (shear + torsion) ** 2).toBeCloseTo(utilisation, 6);
      expect(torsion).toBeLessThan(0.5);
      expect(bent).toBeGreaterThan(1);
    }
  });
});
