import { describe, expect, it } from "vitest";
import { openingPlaces, planOpeningPlaces } from "../../src/drawing/dimension-places.ts";
import { elevationFaces } from "../../src/drawing/elevation-faces.ts";
import { planModel } from "../../src/drawing/plan-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const openings = [{ face: "right", framed: true, fromMm: 1603.5, widthMm: 3000 }] as const;
const scheme = drawnUnit({ above: 0, openings: [...openings] });
const [unit] = scheme.containers;
const [opening] = scheme.openings;
if (unit === undefined || opening === undefined) throw new Error("drawn");
const west = unit.xUm / 1000 - 6096;
const [from, wide] = [opening.offsetUm / 1000, opening.widthUm / 1000];
/** ISO 668: a 40 ft unit is 12.192 m long. */
const byHand = [west, west + from, west + from + wide, west + 12_192];

const baysOf = (places: readonly number[]): number[] =>
  places
    .slice(1)
    .map((at, n) => Math.round(at - (places[n] ?? at)))
    .toSorted((a, b) => a - b);

describe("the string of openings", () => {
  it("runs from the fitting to both edges of the opening and on to the other fitting", () => {
    expect(openingPlaces(elevationFaces(scheme, "south")).map(Math.round)).toEqual(byHand.map(Math.round));
    expect(planOpeningPlaces(planModel(scheme, 0).units).map(Math.round)).toEqual(byHand.map(Math.round));
  });

  it("has the same bays where the other side is cut alike", () => {
    const turned = { ...scheme, openings: scheme.openings.map((each) => ({ ...each, face: "left" as const })) };
    const mirrored = openingPlaces(elevationFaces(turned, "north"));
    expect(mirrored).toHaveLength(4);
    expect(baysOf(mirrored)).toEqual(baysOf(byHand));
  });

  it("is none where nothing is cut", () => {
    const whole = drawnUnit({ above: 0 });
    expect(openingPlaces(elevationFaces(whole, "south"))).toEqual([]);
    expect(planOpeningPlaces(planModel(whole, 0).units)).toEqual([]);
  });
});
