import { placeContainer } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { snapUnit } from "../../src/tools/snap-unit.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const heightMm = 2896;

describe("snapUnit(scheme, unit, reach)", () => {
  it("draws a unit above to the fittings of the one below within reach, so that all four centres meet", () => {
    const { unit, caught } = snapUnit(schemeOf([g1]), unitAt("f1", "F1", 143, -87, heightMm), 200);
    const below = placeContainer(g1).topFittings.map(({ at }) => at);
    const above = placeContainer(unit).bottomFittings.map(({ at }) => at);
    expect(above).toEqual(below);
    expect(caught).toEqual(["g1"]);
  });

  it("leaves a unit on the 10 mm grid where nothing is within reach", () => {
    const { unit, caught } = snapUnit(schemeOf([g1]), unitAt("f1", "F1", 3003, 1007, heightMm), 200);
    expect([unit.xUm, unit.yUm]).toEqual([3_000_000, 1_010_000]);
    expect(caught).toEqual([]);
  });

  it("lays a unit beside another flush at the ends and touching along the side", () => {
    const { unit } = snapUnit(schemeOf([g1]), unitAt("g2", "G2", 60, 2530, 0), 200);
    // Side to side the centres are one width apart: 2438 mm (ISO 668).
    expect([unit.xUm, unit.yUm]).toEqual([0, 2_438_000]);
  });

  it("catches each axis by itself: a unit shifted along still lines up across", () => {
    const { unit } = snapUnit(schemeOf([g1]), unitAt("f1", "F1", 3000, 120, heightMm), 200);
    expect([unit.xUm, unit.yUm]).toEqual([3_000_000, 0]);
  });

  it("draws a turned unit to a fitting below, centre over centre", () => {
    const turned = unitAt("f1", "F1", -4900, 0, heightMm, 90);
    const { unit } = snapUnit(schemeOf([g1]), turned, 250);
    const below = placeContainer(g1).topFittings.map(({ at }) => at.xMm);
    const above = placeContainer(unit).bottomFittings.map(({ at }) => at.xMm);
    expect(above.some((x) => below.some((target) => Math.abs(target - x) < 0.001))).toBe(true);
  });

  it("does not catch on the copy of the unit that is already in the scheme", () => {
    const { caught } = snapUnit(schemeOf([g1]), { ...g1, xUm: 50_000 }, 200);
    expect(caught).toEqual([]);
  });
});
