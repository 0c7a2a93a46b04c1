import { describe, expect, it } from "vitest";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { combinationText } from "../../src/loads/load-combination.ts";
import type { CombinationRequest } from "../../src/loads/design-basis.ts";
import type { LoadSymbol } from "../../src/loads/load-symbol.ts";

const actions = new Set<LoadSymbol>(["D", "L", "Lr", "S", "W", "Eh"]);
const request = (change: Partial<CombinationRequest>): CombinationRequest => ({
  level: "strength",
  present: actions,
  halfCompanionLive: false,
  overstrength: false,
  ...change,
});
const texts = (edition: "IBC 2021" | "IBC 2024", change: Partial<CombinationRequest>) =>
  designBasisFor(edition).combinations(request(change)).map(combinationText);

// Expected sums: published check values 6.1 (ASCE 7-16 and 7-22 chapter 2, from memory), written out by hand.
describe("combinations of IBC 2021", () => {
  it("hold every strength sum of 2.3.1 and 2.3.6, the roof term once for Lr and once for S", () => {
    expect(texts("IBC 2021", {})).toEqual([
      "1.4D",
      "1.2D + 1.6L + 0.5Lr",
      "1.2D + 1.6L + 0.5S",
      "1.2D + 1.6Lr + L",
      "1.2D + 1.6S + L",
      "1.2D + 1.6Lr + 0.5W",
      "1.2D + 1.6S + 0.5W",
      "1.2D + W + L + 0.5Lr",
      "1.2D + W + L + 0.5S",
      "0.9D + W",
      "1.2D + Ev + Eh + L + 0.2S",
      "0.9D − Ev + Eh",
    ]);
  });

  it("hold every allowable sum of 2.4.1 and 2.4.5", () => {
    expect(texts("IBC 2021", { level: "allowable" })).toEqual([
      "D",
      "D + L",
      "D + Lr",
      "D + S",
      "D + 0.75L + 0.75Lr",
      "D + 0.75L + 0.75S",
      "D + 0.6W",
      "D + 0.75L + 0.45W + 0.75Lr", // 0.75 × 0.6W
      "D + 0.75L + 0.45W + 0.75S",
      "0.6D + 0.6W",
      "D + 0.7Ev + 0.7Eh",
      "D + 0.525Ev + 0.525Eh + 0.75L + 0.75S",
      "0.6D − 0.7Ev + 0.7Eh",
    ]);
  });

  it("halve the companion live load in rows 3, 4 and 6 only when asked", () => {
    expect(texts("IBC 2021", { halfCompanionLive: true })).toEqual(
      expect.arrayContaining([
        "1.2D + 1.6L + 0.5S",
        "1.2D + 1.6S + 0.5L",
        "1.2D + W + 0.5L + 0.5S",
        "1.2D + Ev + Eh + 0.5L + 0.2S",
      ]),
    );
  });

  it("put Emh in the place of Eh with overstrength", () => {
    expect(texts("IBC 2021", { overstrength: true }).slice(-2)).toEqual([
      "1.2D + Ev + Emh + L + 0.2S",
      "0.9D − Ev + Emh",
    ]);
  });

  it("state only what is there, each sum once", () => {
    expect(texts("IBC 2021", { present: new Set<LoadSymbol>(["D", "L"]) })).toEqual([
      "1.4D",
      "1.2D + 1.6L",
      "1.2D + L",
    ]);
  });
});

describe("combinations of IBC 2024", () => {
  it("take snow at strength level: 0.3, 1.0, 0.15", () => {
    expect(texts("IBC 2024", {}).filter((text) => text.includes("S"))).toEqual([
      "1.2D + 1.6L + 0.3S",
      "1.2D + S + L",
      "1.2D + S + 0.5W",
      "1.2D + W + L + 0.3S",
      "1.2D + Ev + Eh + L + 0.15S",
    ]);
  });

  it("take 0.7S in allowable sums and 0.1S in the seismic one", () => {
    expect(texts("IBC 2024", { level: "allowable" }).filter((text) => text.includes("S"))).toEqual([
      "D + 0.7S",
      "D + 0.75L + 0.525S", // 0.75 × 0.7
      "D + 0.75L + 0.45W + 0.525S",
      "D + 0.525Ev + 0.525Eh + 0.75L + 0.1S",
    ]);
  });
});
