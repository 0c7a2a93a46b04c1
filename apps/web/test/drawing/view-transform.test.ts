import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fromScreen,
  project,
  screenToSite,
  toScreen,
  unproject,
  type Projection,
} from "../../src/drawing/view-transform.ts";

const projections: readonly Projection[] = ["south", "north", "east", "west", "plan"];
const lengthMm = fc.integer({ min: -200_000, max: 200_000 });
const view = fc.record({
  originXPx: fc.integer({ min: -500, max: 2000 }),
  originYPx: fc.integer({ min: -500, max: 2000 }),
  pxPerM: fc.integer({ min: 1, max: 80 }),
});
const point = fc.record({ xMm: lengthMm, yMm: lengthMm, zMm: lengthMm });

describe("a view", () => {
  it("gives back the paper point that was put on the screen", () => {
    fc.assert(
      fc.property(view, lengthMm, lengthMm, (transform, uMm, vMm) => {
        const back = fromScreen(transform, toScreen(transform, { uMm, vMm }));
        expect(back.uMm).toBeCloseTo(uMm, 6);
        expect(back.vMm).toBeCloseTo(vMm, 6);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("gives back the site point it projected, from every side and from above", () => {
    fc.assert(
      fc.property(point, fc.constantFrom(...projections), (at, projection) => {
        const { depthMm, ...onPaper } = project(projection, at);
        const back = unproject(projection, onPaper, depthMm);
        expect([back.xMm, back.yMm, back.zMm].map((value) => value + 0)).toEqual(
          [at.xMm, at.yMm, at.zMm].map((value) => value + 0),
        );
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it("draws 1 m as 50 px at 50 px a metre, up on paper being up on the screen", () => {
    const transform = { originXPx: 205, originYPx: 498, pxPerM: 50 };
    expect(toScreen(transform, { uMm: 12_192, vMm: 2_896 })).toEqual({ xPx: 205 + 609.6, yPx: 498 - 144.8 });
  });

  it.each([
    ["south", { xMm: 1, yMm: 9, zMm: 0 }, 1],
    ["north", { xMm: 1, yMm: 9, zMm: 0 }, -1],
    ["east", { xMm: 9, yMm: 1, zMm: 0 }, 1],
    ["west", { xMm: 9, yMm: 1, zMm: 0 }, -1],
  ] as const)("seen from the %s, the right hand is where someone looking at that side has it", (side, at, uMm) => {
    expect(project(side, at).uMm).toBe(uMm);
  });

  it.each(["south", "north", "east", "west"] as const)(
    "from the %s, what is farther out on that side is nearer to the eye",
    (side) => {
      const outwards = {
        south: { xMm: 0, yMm: -1, zMm: 0 },
        north: { xMm: 0, yMm: 1, zMm: 0 },
        east: { xMm: 1, yMm: 0, zMm: 0 },
        west: { xMm: -1, yMm: 0, zMm: 0 },
      };
      expect(project(side, outwards[side]).depthMm).toBe(-1);
    },
  );

  it("finds the site point under a px of an elevation in the depth of the face", () => {
    const transform = { originXPx: 100, originYPx: 500, pxPerM: 50 };
    expect(screenToSite(transform, "east", { xPx: 150, yPx: 400 }, -12_192)).toEqual({
      xMm: 12_192,
      yMm: 1000,
      zMm: 2000,
    });
  });
});
