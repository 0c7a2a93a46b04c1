import { describe, expect, it } from "vitest";
import { elevationFaces } from "../../src/drawing/elevation-faces.ts";
import { isometricEye } from "../../src/drawing/picture-eye.ts";
import { sectionModel } from "../../src/drawing/section-model.ts";
import { crossingsAt, pathInSection, pathOnPicture, strandsOnElevation } from "../../src/drawing/seen-strands.ts";
import { runForces } from "../../src/flow/run-forces.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { oneRun, ownWeight, pressed } from "../strength/one-run.ts";

const forcesOf = (scheme: ReturnType<typeof drawnUnit>) => {
  const { set, solved } = oneRun(scheme, [ownWeight(scheme, 40_000), pressed(scheme, 3400)]);
  return runForces(analyse(inOrder(scheme)), set.built, solved);
};

const straight = drawnUnit({ above: 1 });
const stacked = drawnUnit({ above: 1, openings: [{ face: "right", framed: true, fromMm: 1603.5, widthMm: 3000 }] });
const crossing = {
  ...stacked,
  containers: stacked.containers.map((one, n) => (n === 1 ? { ...one, turnMdeg: 90_000 } : one)),
};
const forces = forcesOf(crossing);

describe("what a plan cuts of the load path", () => {
  it("is four posts in a straight stack, each with what it carries at that height", () => {
    const { strands, path } = forcesOf(straight);
    const cut = crossingsAt(1448, strands, path);
    expect(cut.map(({ elementId }) => elementId)).toEqual(["u1", "u1", "u1", "u1"]);
    // by hand: between what stands on the post, 35.27 kN, and what it hands to its pad, 70.53 kN
    for (const { forceKn, at } of cut) {
      expect(at.zMm).toBe(1448);
      expect(forceKn).toBeGreaterThan(35.26);
      expect(forceKn).toBeLessThan(70.54);
    }
  });

  it("takes each strand as often down as it goes, less as often as it comes up again", () => {
    const zMm = 1448;
    for (const { id, forceKn, points } of forces.strands) {
      const [first, last] = [points[0]?.zMm ?? 0, points.at(-1)?.zMm ?? 0];
      const net = first > zMm && last <= zMm ? forceKn : first <= zMm && last > zMm ? -forceKn : 0;
      const own = forces.strands.filter((strand) => strand.id === id);
      expect(crossingsAt(zMm, own, []).reduce((sum, each) => sum + each.forceKn, 0)).toBeCloseTo(net, 9);
    }
  });
});

describe("strands on the views", () => {
  it("of an elevation are those in the faces at its front", () => {
    const south = strandsOnElevation(forces.strands, elevationFaces(crossing, "south"));
    expect(south.length).toBeGreaterThan(3);
    // the upper unit is turned a quarter: its front end looks south
    expect(new Set(south.map(({ unitId, wall }) => `${unitId} ${wall}`))).toEqual(new Set(["u1 right", "u2 front"]));
  });

  it("of a picture are those in the sheets turned to the eye, its posts those at their edges", () => {
    const [lower, upper] = crossing.containers;
    if (lower === undefined || upper === undefined) throw new Error("drawn");
    const seen = pathOnPicture(forces, lower, isometricEye);
    // hardly anything comes down by the ends of the lower unit
    expect(new Set(seen.strands.map(({ wall }) => wall))).toEqual(new Set(["right"]));
    // the upper unit is turned a quarter: its front end looks south, its right side east
    const above = pathOnPicture(forces, upper, isometricEye);
    expect(new Set(above.strands.map(({ wall }) => wall))).toEqual(new Set(["front", "right"]));
    // from the south-east and above the north-west post alone is hidden
    expect(seen.uprights.map(({ id }) => id).toSorted()).toEqual(
      forces.path
        .filter(({ via, elementId, id }) => via === "corner post" && elementId === "u1" && !id.includes("front-left"))
        .map(({ id }) => id)
        .toSorted(),
    );
  });

  it("of a section are those in the far walls of what it cuts, none in the walls it goes through", () => {
    const along = sectionModel(crossing, { fromXMm: -9000, fromYMm: 0, toXMm: 9000, toYMm: 0 });
    const seen = pathInSection(forces, along);
    const lower = seen.strands.filter(({ unitId }) => unitId === "u1");
    expect(lower.length).toBeGreaterThan(0);
    expect(new Set(lower.map(({ wall }) => wall))).toEqual(new Set(["left"]));
    expect(seen.uprights.every(({ from }) => from.yMm > 0)).toBe(true);
  });
});
