import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { usualAssumptions } from "../../src/model/model-assumptions.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { firstSet, oneRun, ownWeight, pressed } from "./one-run.ts";
import { ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";

/** Direct analysis reduces every stiffness to 0.8: of members, sheets, floors and roofs. */
function reducedSet() {
  const less = 0.8;
  const bar = <T extends { E: number; G: number }>(section: T): T => ({
    ...section,
    E: less * section.E,
    G: less * section.G,
  });
  const sheet = ({ shear, upright, along }: { shear: number; upright: number; along: number }) => ({
    shear: less * shear,
    upright: less * upright,
    along: less * along,
  });
  const { sections, shortRail, sideSheet, frontSheet, floorShear, roofShear, roofAcross } = usualAssumptions;
  const { post, topRail, bottomRail, bottomRailAtSeat, crossMember, doorHeader, frame, fold } = sections;
  return {
    ...firstSet(),
    assumptions: {
      ...usualAssumptions,
      sections: {
        post: bar(post),
        topRail: bar(topRail),
        bottomRail: bar(bottomRail),
        bottomRailAtSeat: bar(bottomRailAtSeat),
        crossMember: bar(crossMember),
        ...(doorHeader && { doorHeader: bar(doorHeader) }),
        frame: bar(frame),
        fold: bar(fold),
      },
      shortRail: { bottomRail: bar(shortRail.bottomRail), bottomRailAtSeat: bar(shortRail.bottomRailAtSeat) },
      sideSheet: sheet(sideSheet),
      frontSheet: sheet(frontSheet),
      floorShear: less * floorShear,
      roofShear: less * roofShear,
      roofAcross: less * roofAcross,
    },
  };
}

describe("reduced stiffness of direct analysis", () => {
  it("changes no first-order utilisation of a unit by more than 0.1 %, so it enters by the lean alone", () => {
    const scheme = drawnUnit({});
    const cases = [ownWeight(scheme, 50_000), pressed(scheme, 3400)];
    const whole = new Map(oneRun(scheme, cases).worsts.map((worst) => [worst.part.id, governingOf(worst).use]));
    for (const worst of oneRun(scheme, cases, { set: reducedSet() }).worsts) {
      const before = whole.get(worst.part.id) ?? Number.NaN;
      expect(Math.abs(governingOf(worst).use - before), worst.part.id).toBeLessThan(1e-3 * Math.max(before, 0.01));
    }
  });
});

describe("the lean of a stack of three 40 ft units", () => {
  const answer = strength(ordinarySchemes["three 40 ft stacked"] ?? drawnUnit({}));
  if (!answer.accepted) throw new Error("the sample is accepted");
  const leans = answer.results.filter(
    ({ limitState, element }) => limitState === "amplification" && element === "building",
  );
  const useOf = (unitId: string): number => leans.find(({ ownerId }) => ownerId === unitId)?.utilisation ?? Number.NaN;

  it("is stated for each unit with its working, walls at their softest", () => {
    expect(leans.map(({ ownerId }) => ownerId).toSorted()).toEqual(["unit-01", "unit-02", "unit-03"]);
    for (const { assumptions, working } of leans) {
      expect(assumptions).toBe("racking ×0.7");
      expect(working?.clause.document).toBe("AISC 360");
    }
  });

  it("grows downwards, as each carries those above it", () => {
    expect(useOf("unit-01")).toBeGreaterThan(useOf("unit-02"));
    expect(useOf("unit-02")).toBeGreaterThan(useOf("unit-03"));
  });

  it("is that of the forces in its working by hand: P over a third of 0.85·0.8·H·L/Δ", () => {
    const working = leans.find(({ ownerId }) => ownerId === "unit-01")?.working;
    const valueOf = (symbol: string): number =>
      working?.symbols.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
    const elastic = (0.85 * 0.8 * valueOf("H") * valueOf("L")) / valueOf("Δ");
    expect(useOf("unit-01")).toBeCloseTo((3 * valueOf("P_story")) / elastic, 9);
    // notional loads push with 0.002 of what stands on it, less its own share that is pushed at its roof
    expect(valueOf("H") / valueOf("P_story")).toBeGreaterThan(0.0015);
    expect(valueOf("H") / valueOf("P_story")).toBeLessThan(0.0021);
  });
});
