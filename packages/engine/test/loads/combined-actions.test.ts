import { describe, expect, it } from "vitest";
import { defaultBasis, type Scheme } from "@cornerway/schema";
import { deadCase } from "../../src/loads/dead-cases.ts";
import { expandCombination, gravityOnly } from "../../src/loads/expanded-combination.ts";
import { combinationText, type LoadCombination } from "../../src/loads/load-combination.ts";
import type { LoadSymbol } from "../../src/loads/load-symbol.ts";
import { movementCases } from "../../src/loads/movement-cases.ts";
import { notionalCases } from "../../src/loads/notional-cases.ts";
import { roofLive } from "../../src/loads/roof-live-cases.ts";
import { deadWorking } from "../../src/loads/dead-working.ts";
import type { Working } from "../../src/working/working.ts";
import { seismicWeights } from "../../src/loads/seismic-weights.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { basis, framed, seismicOf, sumOf } from "./building-actions.ts";
import { idOf, sampleScheme, smallBuildings, tankOn, usesOf } from "./sample-scheme.ts";

const present = new Set<LoadSymbol>(["D", "L", "S", "W", "Eh"]);
const named = (text: string, overstrength = false): LoadCombination => {
  const all = basis.combinations({ level: "strength", present, halfCompanionLive: false, overstrength });
  const found = all.find((one) => combinationText(one) === text);
  if (found === undefined) throw new Error(`no combination ${text}`);
  return found;
};

describe("expandCombination", () => {
  const site = { verticalShare: 0.2 * 0.73333, redundancy: 1.3, overstrength: 2.5 };

  // Ev = 0.2·0.73333·D = 0.14667D: 1.2 + 0.14667 and 0.9 − 0.14667; Eh = 1.3 Q_E; Emh = 2.5 Q_E
  it("turns Ev into dead load, Eh into redundancy and Emh into overstrength times the forces", () => {
    expect(expandCombination(named("1.2D + Ev + Eh + L + 0.2S"), site)).toMatchObject({
      dead: expect.closeTo(1.346666, 5),
      earthquake: 1.3,
      live: 1,
      snow: 0.2,
      movement: 0,
    });
    expect(expandCombination(named("0.9D − Ev + Emh", true), site)).toMatchObject({
      dead: expect.closeTo(0.753334, 5),
      earthquake: 2.5,
    });
  });

  it("puts imposed movements beside gravity combinations, which also take notional loads", () => {
    expect(expandCombination(named("1.4D"), site).movement).toBe(1);
    expect(gravityOnly(named("1.2D + 1.6L + 0.5S"))).toBe(true);
    expect(gravityOnly(named("0.9D + W"))).toBe(false);
  });
});

const post: Scheme["posts"][number] = {
  id: "post",
  tag: "C",
  xUm: 0,
  yUm: 0,
  baseZUm: 0,
  topZUm: 2_896_000,
  turnMdeg: 0,
  section: "HSS4x4x1/4",
};
const weightOf = (weights: ReadonlyMap<string, Working>): number => weights.get(idOf(1))?.result.value ?? Number.NaN;

describe("deadCase", () => {
  const scheme: Scheme = {
    ...sampleScheme(smallBuildings["one 40 ft high-cube"]),
    loads: [{ id: "f", containerId: idOf(1), surface: "floor", case: "finish", pressurePa: 1000 }],
    freeLoads: [tankOn(1)],
    posts: [post],
  };
  const weightKn = (state: "most" | "least" | "bare") => -sumOf(scheme, deadCase(scheme, state)).zN / 1000;

  // 4200·9.81 = 41.202; 1 kPa on 12.192·2.438 = 29.724; plant 5; post of 3.37 in² (2174 mm²)·2.896 m·7850·9.81 = 0.485 → 76.411. Least 3800·9.81 = 37.278 + 29.724 + 0.485 = 67.487. Bare 37.278.
  it("is all at its heaviest, the least there can be, or the bare unit", () => {
    expect(weightKn("most")).toBeCloseTo(76.411, 2);
    expect(weightKn("least")).toBeCloseTo(67.487, 2);
    expect(weightKn("bare")).toBeCloseTo(37.278, 2);
  });

  // 3900·9.81 = 38.259 kN in every state
  it("takes the tare of the plate where it was read", () => {
    const read = { ...scheme, containers: scheme.containers.map((one) => ({ ...one, plateTareKg: 3900 })) };
    const bare = (state: "bare" | "most") => -sumOf(scheme, deadCase(read, state)).zN / 1000;
    expect(bare("bare")).toBeCloseTo(38.259, 3);
    expect(bare("most") - weightKn("most")).toBeCloseTo((3900 - 4200) * 0.00981, 6);
  });

  it("has a working for each unit that gives the same sum, but for steel that belongs to no unit", () => {
    const [container] = scheme.containers;
    if (container === undefined) throw new Error("the sample has a container");
    const worked = (state: "most" | "least" | "bare") => deadWorking(scheme, container, state).result.value / 1000;
    expect(worked("most")).toBeCloseTo(weightKn("most") - 0.485, 3);
    expect(worked("least")).toBeCloseTo(weightKn("least") - 0.485, 3);
    expect(worked("bare")).toBeCloseTo(weightKn("bare"), 9);
  });

  // Heaviest dead 75.926 without the post that belongs to no unit; office partitions 15 psf·29.724 = 21.348; snow 14 psf is under 30: none.
  it("is the seismic weight with partitions and what counts of the snow", () => {
    const used = { ...scheme, uses: usesOf(1, "office") };
    const weights = seismicWeights(used, framed(scheme), basis, sampleHazards());
    expect(weightOf(weights) / 1000).toBeCloseTo(75.926 + 21.348, 2);
    // 50 psf: p_f = 35 psf > 30: 20 % of 35 psf·29.724 = 9.962 kN
    const snowy = seismicWeights(used, framed(scheme), basis, sampleHazards({ snow: { psf: 50 } }));
    expect((weightOf(snowy) - weightOf(weights)) / 1000).toBeCloseTo(9.962, 2);
  });
});

describe("notionalCases", () => {
  // 0.002·100 kN = 0.2 kN
  it("push 0.2 % of the gravity load along each axis", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const gravity = new Map([[idOf(1), 100_000]]);
    const cases = notionalCases(framed(scheme), gravity, basis.notional).map((one) => sumOf(scheme, one));
    expect(cases.map(({ xN, yN }) => [xN, yN])).toEqual([
      [expect.closeTo(200, 9), 0],
      [0, expect.closeTo(200, 9)],
    ]);
  });
});

describe("movementCases", () => {
  it("raise and lower every support by 5 mm and let pads go down 10 mm, one at a time", () => {
    const cases = movementCases(
      [
        { elementId: "pad", kind: "pad" },
        { elementId: "seat", kind: "seat" },
      ],
      defaultBasis,
    );
    expect(
      cases.map(({ id, loads }) => [id, loads.map((load) => (load.kind === "movement" ? load.downMm : 0))]),
    ).toEqual([
      ["T pad low", [5]],
      ["T pad high", [-5]],
      ["T pad settled", [10]],
      ["T seat low", [5]],
      ["T seat high", [-5]],
    ]);
  });
});

describe("roofLive", () => {
  // 29.724 m² = 319.9 ft²: R_1 = 1.2 − 0.3199 = 0.8801: 17.60 psf = 842.8 Pa·29.724 = 25.05 kN on each exposed roof; the covered one takes none
  it("loads exposed roofs with the code's load, reduced for the unit's roof", () => {
    const scheme = sampleScheme(smallBuildings["a step"]);
    const sum = sumOf(scheme, roofLive(scheme, framed(scheme), basis).action);
    expect(-sum.zN / 1000).toBeCloseTo(2 * 25.05, 1);
  });

  // a deck serving a dwelling has no reduction here: 100 psf without a served room = 142.3 kN
  it("loads a roof used as a deck with the deck's load", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"], {
      uses: usesOf(1, "balcony or deck", "roof"),
    });
    expect(-sumOf(scheme, roofLive(scheme, framed(scheme), basis).action).zN / 1000).toBeCloseTo(142.32, 1);
  });
});

describe("seismicCases", () => {
  it("give none along axes whose system the edition refuses, and say why", () => {
    const scheme = sampleScheme(smallBuildings["one 40 ft high-cube"]);
    const severe = sampleHazards({ seismic: { s1: 0.8, siteValues: { sms: 2, sm1: 1.5 } } });
    const { axes, cases, design } = seismicOf(scheme, severe);
    expect(design.category).toBe("E");
    expect(cases).toEqual([]);
    expect(axes.x).toMatchObject({
      forces: undefined,
      permit: { permitted: false, why: "not permitted in this category", category: "E" },
    });
  });

  // V = 0.36667·47.088 = 17.266 kN; T_a = 0.02·17.0^0.75 = 0.168 s → k 1; heights 2.591 and 5.182: one third, two thirds
  it("put one third and two thirds of the shear on the storeys of two 20 ft units", () => {
    const scheme = sampleScheme(smallBuildings["two 20 ft stacked"]);
    const storeys = seismicOf(scheme, sampleHazards()).axes.x.forces?.storeys ?? [];
    expect(storeys.map(({ forceN }) => forceN / 1000)).toEqual([
      expect.closeTo(17.266 / 3, 2),
      expect.closeTo((17.266 * 2) / 3, 2),
    ]);
  });
});
