import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { barLength } from "../../src/drawing/ScaleBar.tsx";
import { fromScreen } from "../../src/drawing/view-transform.ts";
import { layViews } from "../../src/paper/lay-views.ts";
import { magnified, moved, plainLens, plainLenses, statedScale, stepped, throughLenses } from "../../src/paper/lens.ts";
import { orbited, orbitedByPx } from "../../src/paper/orbit.ts";
import { isometricPlace } from "@cornerway/engine";
import { demoScheme } from "../support/demo-scheme.ts";

const laid = layViews({ widthPx: 934, heightPx: 868 }, demoScheme, "south", 0);
const seen = (lens: typeof plainLens) => throughLenses(laid, { ...plainLenses, elevation: lens }).elevation.transform;

describe("looking closer", () => {
  it("keeps the place under the pointer where it is, whatever was done before", () => {
    const act = fc.record({
      at: fc.record({ xPx: fc.integer({ min: 0, max: 900 }), yPx: fc.integer({ min: 0, max: 500 }) }),
      by: fc.double({ min: 0.5, max: 2, noNaN: true }),
      asidePx: fc.integer({ min: -300, max: 300 }),
    });
    fc.assert(
      fc.property(fc.array(act, { minLength: 1, maxLength: 12 }), (acts) => {
        let lens = plainLens;
        for (const { at, by, asidePx } of acts) {
          lens = moved(lens, asidePx, -asidePx);
          const before = fromScreen(seen(lens), at);
          lens = magnified(lens, laid.elevation, at, by);
          const after = fromScreen(seen(lens), at);
          expect(after.uMm).toBeCloseTo(before.uMm, 3);
          expect(after.vMm).toBeCloseTo(before.vMm, 3);
        }
      }),
    );
  });

  it("steps through the scales of ISO 5455 and back, and never past 1:5", () => {
    let lens = plainLens;
    const stated: string[] = [];
    for (let at = 0; at < 7; at += 1) {
      lens = stepped(lens, laid.elevation, 1);
      stated.push(statedScale(seen(lens).pxPerM));
    }
    expect(statedScale(laid.elevation.transform.pxPerM)).toBe("1:100");
    expect(stated).toEqual(["1:50", "1:20", "1:10", "1:5", "1:5", "1:5", "1:5"]);
    expect(statedScale(seen(stepped(lens, laid.elevation, -1)).pxPerM)).toBe("1:10");
  });

  it("states the scale that 0.2 mm of paper a px make true: 10 m at 1:100 are 500 px, printed 100 mm long", () => {
    expect((10 * 50 * 0.2) / 1000).toBeCloseTo(10 / 100, 12);
    expect(statedScale(50)).toBe("1:100");
    expect(statedScale(100)).toBe("1:50");
  });

  it("leaves the views as laid while none is looked into", () => {
    expect(throughLenses(laid, plainLenses)).toBe(laid);
  });
});

describe("the scale bar", () => {
  it("follows the scale: 2 m at 50 px a metre, 0.2 m at 500, 5 m at 20, each 100 px long", () => {
    expect(barLength(50, "SI", 104)).toEqual({ length: 2, longPx: 100 });
    expect(barLength(500, "SI", 104)).toEqual({ length: 0.2, longPx: 100 });
    expect(barLength(20, "SI", 104)).toEqual({ length: 5, longPx: 100 });
  });

  it("is in whole feet of 0.3048 m for who draws in feet", () => {
    const bar = barLength(50, "US", 104);
    expect(bar?.length).toBe(5);
    expect(bar?.longPx).toBeCloseTo(5 * 0.3048 * 50, 9);
  });

  it("is left out where there is no room for any", () => {
    expect(barLength(500, "SI", 10)).toBeNull();
  });
});

describe("going round the building", () => {
  it("comes back after a whole turn in steps of 15°, and stops above level and before straight down", () => {
    const round = Array.from({ length: 24 }).reduce<typeof isometricPlace>(
      (place) => orbited(place, 15_000, 0),
      isometricPlace,
    );
    expect(round).toEqual(isometricPlace);
    expect(orbitedByPx(isometricPlace, 0, 10_000).tiltMdeg).toBe(80_000);
    expect(orbitedByPx(isometricPlace, 0, -10_000).tiltMdeg).toBe(5_000);
  });
});
