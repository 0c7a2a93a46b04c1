import { describe, expect, it } from "vitest";
import { codeSets } from "../../src/codes/loads/code-sets.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { hazardRefusalText } from "../../src/loads/hazard-refusal.ts";
import { sampleHazards } from "./sample-hazards.ts";

describe("designBasisFor", () => {
  // The two closed sets of the project; pairings from memory of the building codes' referenced standards.
  it("gives one closed set of standards for each building code and no third", () => {
    expect(codeSets).toEqual({
      "IBC 2021": {
        building: "IBC 2021",
        loads: "ASCE 7-16",
        steel: "AISC 360-16",
        coldFormed: "AISI S100-16",
        certainty: "memory",
      },
      "IBC 2024": {
        building: "IBC 2024",
        loads: "ASCE 7-22",
        steel: "AISC 360-22",
        coldFormed: "AISI S100-16 with its supplements",
        certainty: "memory",
      },
    });
  });

  it("cites one edition throughout a set", () => {
    for (const [edition, year] of [
      ["IBC 2021", "2016"],
      ["IBC 2024", "2022"],
    ] as const) {
      const basis = designBasisFor(edition);
      const hazards = sampleHazards({ edition });
      const clauses = [
        ...basis.combinations({
          level: "strength",
          present: new Set(["D", "L"]),
          halfCompanionLive: false,
          overstrength: false,
        }),
        basis.snow.flatRoof(hazards).balanced,
        basis.gravity.roofLive(10),
        ...basis.seismic.design(hazards).workings,
        basis.seismic.permit("ordinary moment frames", "B", 3000),
      ].map(({ clause }) => clause.edition);
      expect(new Set(clauses)).toEqual(new Set([year]));
    }
  });
});

describe("hazards of another edition", () => {
  it("are refused in words, each by name", () => {
    const refused = designBasisFor("IBC 2024").refuse(sampleHazards({ edition: "IBC 2021" }));
    expect(refused.filter(({ code }) => code === "other-edition").map(hazardRefusalText)).toEqual([
      "The wind values were read for IBC 2021, but IBC 2024 is adopted. Read them again for IBC 2024.",
      "The snow values were read for IBC 2021, but IBC 2024 is adopted. Read them again for IBC 2024.",
      "The seismic values were read for IBC 2021, but IBC 2024 is adopted. Read them again for IBC 2024.",
    ]);
  });

  it("are refused alone where only one of them is of another edition", () => {
    const mixed = sampleHazards({ snow: { edition: "IBC 2024" } });
    expect(designBasisFor("IBC 2021").refuse(mixed)).toEqual([
      { code: "other-edition", hazard: "snow", given: "IBC 2024", adopted: "IBC 2021" },
    ]);
  });
});

describe("hazards that lack a value", () => {
  it("are accepted when nothing lacks", () => {
    expect(designBasisFor("IBC 2021").refuse(sampleHazards())).toEqual([]);
    expect(designBasisFor("IBC 2024").refuse(sampleHazards({ edition: "IBC 2024" }))).toEqual([]);
  });

  it("are refused for ASCE 7-22 without winter wind or site accelerations", () => {
    const { snow, seismic, ...rest } = sampleHazards({ edition: "IBC 2024" });
    const { winterWind: _wind, ...calm } = snow;
    const { siteValues: _values, ...mapped } = seismic;
    expect(
      designBasisFor("IBC 2024")
        .refuse({ ...rest, snow: calm, seismic: mapped })
        .map(hazardRefusalText),
    ).toEqual([
      "IBC 2024 needs the winter wind parameter for snow, and none is given.",
      "IBC 2024 needs S_MS and S_M1 of the site for seismic, and none is given.",
    ]);
  });

  it("are refused for ASCE 7-16 on soft ground without a site study, and where no site can have the value", () => {
    const soft = sampleHazards({ seismic: { siteClass: "E" }, wind: { mph: -1 } });
    expect(
      designBasisFor("IBC 2021")
        .refuse(soft)
        .map(({ code }) => code),
    ).toEqual(["value-out-of-range", "value-missing"]);
  });
});

describe("gaps", () => {
  it("name tornado loads for risk categories III and IV of the later edition alone", () => {
    const has = (edition: "IBC 2021" | "IBC 2024", riskCategory: "II" | "III") =>
      designBasisFor(edition).gaps(sampleHazards({ edition, riskCategory })).includes("tornado");
    expect([has("IBC 2021", "III"), has("IBC 2024", "II"), has("IBC 2024", "III")]).toEqual([false, false, true]);
  });

  it("name the site study ASCE 7-16 asks for on soft ground, unless site values are given", () => {
    const has = (siteValues?: { sms: number; sm1: number }) =>
      designBasisFor("IBC 2021")
        .gaps(sampleHazards({ seismic: { s1: 0.2, ...(siteValues === undefined ? {} : { siteValues }) } }))
        .includes("site response study");
    expect([has(), has({ sms: 1, sm1: 0.5 })]).toEqual([true, false]);
  });
});
