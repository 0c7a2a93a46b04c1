import { describe, expect, it } from "vitest";
import type { DesignBasis } from "../../src/loads/design-basis.ts";
import { siteActions, type ActionRequest } from "../../src/loads/site-actions.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis } from "./building-actions.ts";
import { idOf, on, sampleScheme, smallBuildings, usesOf } from "./sample-scheme.ts";

const overhang = (hazards = sampleHazards()) =>
  sampleScheme(smallBuildings["an overhang of 3 m"], { ...on(hazards), uses: usesOf(2, "dwelling") });
const request = (change: Partial<ActionRequest> = {}): ActionRequest => ({
  scheme: overhang(),
  bearings: new Map([[idOf(2), [100, 9190]]]),
  supports: [{ elementId: "pad", kind: "pad" }],
  linesOf: () => [],
  ...change,
});

// A basis of nowhere, in two lines: the rest of the engine works with it as with any other.
const nowhere: DesignBasis = { ...basis, refuse: () => [], combinations: () => [] };
const snowless: DesignBasis = { ...nowhere, snow: { ...basis.snow, seismicShare: () => 0, drift: () => undefined } };

describe("siteActions", () => {
  it("gives every kind of action for a scheme with an overhang", () => {
    const actions = siteActions(request(), basis);
    if (!actions.accepted) throw new Error("refused");
    expect(actions.imposed.map(({ id }) => id)).toContain("L overhangs");
    expect(actions.site?.snow.cases.map(({ id }) => id)).toEqual(["S uniform", "S drift"]);
    // 24 load cases with two signs inside and the least wind of four directions
    expect(actions.site?.wind.cases).toHaveLength(52);
    // both axes, both ways, both eccentricities, 30 % of the other axis both ways: category D
    expect(actions.site?.seismic.cases).toHaveLength(16);
    expect(actions.movements).toHaveLength(3);
    expect(actions.site?.seismic.redundancy.factor).toBe(1.3);
  });

  it("names the shape limits an overhang breaks", () => {
    const actions = siteActions(request(), basis);
    if (!actions.accepted) throw new Error("refused");
    expect(actions.site?.wind.limits.filter(({ holds }) => !holds).map(({ code }) => code)).toEqual([
      "one roof level",
      "closed below",
    ]);
    expect(actions.site?.wind.boxFactors["+y"]).toBeCloseTo(1.24607, 4); // 15.192·5.792/(2·12.192·2.896)
  });

  // Units of 6058 · 2438 · 2591: two side by side, one on the second, one 150 mm behind the first. Box 12 266 · 4876 · 5182 mm.
  it("raises pressures until the exposed sides take the wind of the whole box", () => {
    const scheme = sampleScheme(
      [
        { type: "1CC", xMm: 0, yMm: -1219, zMm: 0 },
        { type: "1CC", xMm: 0, yMm: 1219, zMm: 0 },
        { type: "1CC", xMm: 0, yMm: 1219, zMm: 2591 },
        { type: "1CC", xMm: -6208, yMm: -1219, zMm: 0 },
      ],
      on(sampleHazards()),
    );
    const actions = siteActions(request({ scheme, bearings: new Map() }), basis);
    if (!actions.accepted) throw new Error("refused");
    // ends: the last and the first cover each other, three of four places of 2438 · 2591 are exposed on either side
    expect(actions.site?.wind.boxFactors["+x"]).toBeCloseTo(4 / 3, 9);
    // long sides: three of 6058 · 2591 = 47.089 m² look either way, the box has 12.266 · 5.182 = 63.562 m²
    expect(actions.site?.wind.boxFactors["-y"]).toBeCloseTo(63.562 / 47.089, 4);
  });

  it("finds the unit with its own end doors partially enclosed once they stand open", () => {
    const actions = siteActions(request(), basis);
    if (!actions.accepted) throw new Error("refused");
    expect(actions.site?.wind.pressures.enclosure).toMatchObject({
      closed: "enclosed",
      doorsOpen: "partially enclosed",
      coefficient: 0.55,
    });
  });

  // unit-01 has a window in its door end and is tight; unit-02 keeps its doors: each a compartment of its own
  it("takes the pressure inside from the compartment where it is highest", () => {
    const pair = sampleScheme(smallBuildings["two side by side"], on(sampleHazards()));
    const glazed = {
      id: "g",
      tag: "G",
      containerId: idOf(1),
      face: "door",
      use: "window",
      offsetUm: 200_000,
      sillUm: 300_000,
      widthUm: 2_000_000,
      heightUm: 2_000_000,
      framed: true,
    } as const;
    const coefficient = (containerId: string) => {
      const actions = siteActions(
        request({ scheme: { ...pair, openings: [{ ...glazed, containerId }] }, bearings: new Map() }),
        basis,
      );
      return actions.accepted ? actions.site?.wind.pressures.enclosure.coefficient : Number.NaN;
    };
    expect([coefficient(idOf(1)), coefficient(idOf(2))]).toEqual([0.55, 0.55]);
  });

  it("refuses hazards of another edition and gives no number", () => {
    expect(siteActions(request({ scheme: overhang(sampleHazards({ edition: "IBC 2024" })) }), basis)).toMatchObject({
      accepted: false,
      refusals: [{ code: "other-edition" }, { code: "other-edition" }, { code: "other-edition" }],
    });
  });

  it("gives gravity and movements alone while the project has no hazards", () => {
    const actions = siteActions(request({ scheme: { ...overhang(), ...on(null) } }), basis);
    if (!actions.accepted) throw new Error("refused");
    expect(actions.site).toBeUndefined();
    expect(actions.imposed.length).toBeGreaterThan(0);
    expect(actions.movements).toHaveLength(3);
  });

  it("asks nothing but the basis it is given", () => {
    const actions = siteActions(request({ scheme: overhang(sampleHazards({ edition: "IBC 2024" })) }), snowless);
    if (!actions.accepted) throw new Error("refused");
    expect(actions.site?.snow.cases.map(({ id }) => id)).toEqual(["S uniform"]);
  });

  it("gives the same text for the same scheme, twice", () => {
    expect(JSON.stringify(siteActions(request(), basis))).toBe(JSON.stringify(siteActions(request(), basis)));
  });
});
