import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { deflectionResults } from "../../src/strength/deflection-results.ts";
import { schemeActions } from "../../src/strength/scheme-actions.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis } from "./one-run.ts";

function deflections(given: Scheme) {
  const scheme = inOrder(given);
  const analysis = analyse(scheme);
  const actions = schemeActions(scheme, analysis, basis);
  if (!actions.accepted) throw new Error("the sample is accepted");
  const found = deflectionResults(scheme, analysis, actions, basis.factored, strengthMemory());
  const valueOf = (name: string): number => {
    const one = found.find(({ element, place }) => `${element} ${place}` === name);
    return one?.working?.symbols.find(({ symbol }) => symbol === "value")?.value ?? Number.NaN;
  };
  return { found, valueOf };
}

// modelling: side wall of a 40 ft high-cube under 4.0 kN/m on the bottom rail and 1.5 on the top rail, 12.0 m: 2.68 mm whole (fold
// by fold). A wall of sheet gives by shear, in proportion to all it carries: 4.0 of 5.5 kN/m make 1.95 mm.
describe("rails of a 40 ft unit with 8.0 kN/m of imposed load on its floor", () => {
  const whole = deflections(drawnUnit({ imposedPa: 8000 / 2.438 }));

  it("sag by 1.95 mm under it where the side is whole, to a tenth", () => {
    expect(Math.abs(whole.valueOf("bottom side rail right, L") / 1.95 - 1)).toBeLessThan(0.1);
  });

  it("are held against 1/240 of 11 985 mm under all, and 1/360 under imposed load", () => {
    const limits = whole.found
      .filter(({ element }) => element === "bottom side rail")
      .map(({ working }) => Math.round((working?.limit?.value ?? NaN) * 100) / 100);
    expect(new Set(limits)).toEqual(new Set([49.94, 33.29]));
  });

  it("sag more across a framed opening near the end than one in the middle", () => {
    const cut = (fromMm: number): number => {
      const { found } = deflections(
        drawnUnit({ openings: [{ face: "right", framed: true, fromMm, widthMm: 3000 }], imposedPa: 3281 }),
      );
      return Math.max(
        ...found.filter(({ element }) => element === "bottom side rail").map(({ utilisation = 0 }) => utilisation),
      );
    };
    expect(cut(400)).toBeGreaterThan(2 * cut(4596));
  });
});

describe("a unit on another", () => {
  it("keeps clear of it: its rail's sag under all loads against 17 mm", () => {
    const { valueOf, found } = deflections(drawnUnit({ above: 1 }));
    const gap = found.filter(({ limitState }) => limitState === "gap closure");
    expect(gap.map(({ ownerId, element, place }) => `${ownerId} ${element} ${place}`).toSorted()).toEqual([
      "u2 bottom side rail left, gap below",
      "u2 bottom side rail right, gap below",
    ]);
    expect(gap[0]?.working?.limit?.value).toBe(17);
    expect(valueOf("bottom side rail right, gap below")).toBeGreaterThan(1);
  });
});

/**
 * By hand: cross members of a 40 ft unit stand 11 985/39 = 307.3 mm apart and span 2259 mm; 5 q L⁴ / 384 E I with the section's I.
 * The model lays what is on the whole width of 2438 mm between the axes of the rails.
 */
describe("cross members of a 40 ft unit under 4.8 kPa of imposed load", () => {
  const { found, valueOf } = deflections(drawnUnit({ imposedPa: 4800 }));

  it("sag as simple spans of 2259 mm under 0.307 m of floor each", () => {
    const spacingMm = 11_985 / Math.round(11_985 / 308);
    const q = 4800e-6 * spacingMm * (2438 / 2259);
    const byHand = (5 * q * 2259 ** 4) / (384 * 200_000 * containerMembers["cross member"].ixMm4);
    expect(Math.abs(valueOf("cross member all, L") / byHand - 1)).toBeLessThan(0.01);
  });

  it("are held against 1/360 of their span, and so are sills; headers too", () => {
    const cross = found.find(({ element, place }) => element === "cross member" && place.endsWith(", L"));
    expect(cross?.working?.limit?.value).toBeCloseTo(2259 / 360, 6);
    expect(new Set(found.map(({ element }) => element))).toContain("sill");
  });
});
