import { compareSchemes, Scheme } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changesOnElevation, changesOnPlan, freshPart, type PlacedChange } from "../../src/drawing/change-places.ts";
import { storeysOf } from "../../src/geometry/storeys.ts";
import { furnishedDemo, thirtyPlants, type Plant } from "./planted-changes.ts";

const sides = ["south", "east", "north", "west"] as const;

/** All that four elevations and the plans of every storey show of what changed. */
function everyView(before: Scheme, after: Scheme): PlacedChange[] {
  const { elements } = compareSchemes(before, after);
  return [
    ...sides.flatMap((side) => changesOnElevation(elements, before, after, side)),
    ...storeysOf(after).flatMap(({ index }) => changesOnPlan(elements, before, after, index)),
  ];
}

const idsOn = (before: Scheme, after: Scheme): string[] =>
  [...new Set(everyView(before, after).map(({ id }) => id))].toSorted();

const planted = (plants: readonly Plant[]): Scheme =>
  plants.reduce((scheme, { plant }) => plant(scheme), furnishedDemo);

const idsOf = (plants: readonly Plant[]): string[] => plants.flatMap(({ ids }) => ids).toSorted();

describe("changes on the views of two schemes", () => {
  it("are planted thirty times over, and each scheme so made is one that can be drawn", () => {
    expect(thirtyPlants).toHaveLength(30);
    for (const { plant, does } of thirtyPlants) expect(Scheme.safeParse(plant(furnishedDemo)).success, does).toBe(true);
    expect(Scheme.safeParse(planted(thirtyPlants)).success).toBe(true);
  });

  it.each(thirtyPlants)("show $does and nothing else", (one) => {
    expect(idsOn(furnishedDemo, planted([one]))).toEqual(idsOf([one]));
  });

  it("show all thirty together, and nothing else", () => {
    expect(idsOn(furnishedDemo, planted(thirtyPlants))).toEqual(idsOf(thirtyPlants));
  });

  it("show any choice of the thirty, forwards and back, and nothing else", () => {
    fc.assert(
      fc.property(fc.subarray([...thirtyPlants]), (plants) => {
        const after = planted(plants);
        expect(idsOn(furnishedDemo, after)).toEqual(idsOf(plants));
        expect(idsOn(after, furnishedDemo)).toEqual(idsOf(plants));
      }),
      { seed: 1127, numRuns: 12 },
    );
  });

  it("are none between a scheme and the same scheme", () => {
    expect(everyView(furnishedDemo, structuredClone(furnishedDemo))).toEqual([]);
  });
});

describe("changesOnElevation(changes, before, after, side)", () => {
  const on = (after: Scheme, side: (typeof sides)[number]) =>
    changesOnElevation(compareSchemes(furnishedDemo, after).elements, furnishedDemo, after, side);

  it("goes over the 1.20 m a unit moved east, at its east end from the south and not where it stood", () => {
    const after = planted(thirtyPlants.slice(0, 1));
    const f1 = after.containers.find(({ id }) => id === "f1");
    // 40 ft unit, 12 192 mm (ISO 668): its east end stands half of that from its middle.
    const eastEndMm = (f1?.xUm ?? 0) / 1000 + 12_192 / 2;
    const [change] = on(after, "south");
    expect(change?.fresh.u0Mm).toBeCloseTo(eastEndMm - 1200, 6);
    expect(change?.fresh.u1Mm).toBeCloseTo(eastEndMm, 6);
    expect(change?.was?.u1Mm).toBeCloseTo(eastEndMm - 1200, 6);
  });

  it("shows what was taken away where it was, as gone", () => {
    const after = { ...furnishedDemo, openings: furnishedDemo.openings.filter(({ id }) => id !== "w4") };
    expect(on(after, "south")).toEqual([expect.objectContaining({ id: "w4", gone: true })]);
    expect(on(after, "north")).toEqual([]);
  });

  it("takes with a unit what is cut in it and lies on it: one change, not one for each", () => {
    const without = <E extends { containerId: string }>(list: readonly E[]) =>
      list.filter(({ containerId }) => containerId !== "t1");
    const after = {
      ...furnishedDemo,
      containers: furnishedDemo.containers.filter(({ id }) => id !== "t1"),
      openings: without(furnishedDemo.openings),
      loads: without(furnishedDemo.loads),
    };
    const { elements } = compareSchemes(furnishedDemo, after);
    expect(elements.map(({ id }) => id)).toEqual(["t1"]);
    // The demo cuts W7 and W8 in T1 and lays finish, floor and roof loads on it.
    expect(elements[0]?.with.map(({ id }) => id)).toEqual(["w7", "w8", "t1-finish", "t1-floor", "t1-roof"]);
  });
});

describe("freshPart(is, was)", () => {
  const rect = (u0Mm: number, u1Mm: number, z0Mm = 0, z1Mm = 10) => ({ u0Mm, u1Mm, z0Mm, z1Mm });

  it.each([
    ["all of what is new", rect(0, 100), undefined, rect(0, 100)],
    ["the strip gained on the right", rect(0, 120), rect(0, 100), rect(100, 120)],
    ["the strip gained on the left", rect(-30, 100), rect(0, 100), rect(-30, 0)],
    ["the strip gained above", rect(0, 100, 0, 14), rect(0, 100), rect(0, 100, 10, 14)],
    ["all of what moved clear of where it was", rect(200, 300), rect(0, 100), rect(200, 300)],
    ["all of what became smaller", rect(10, 90), rect(0, 100), rect(10, 90)],
    ["all of what grew on two sides", rect(-10, 110), rect(0, 100), rect(-10, 110)],
  ])("is %s", (_what, is, was, fresh) => {
    expect(freshPart(is, was)).toEqual(fresh);
  });
});
