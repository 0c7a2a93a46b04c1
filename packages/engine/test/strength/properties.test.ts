import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { governingOf, type PartWorst } from "../../src/strength/screen.ts";
import { drawnUnit, type DrawnOpening } from "./drawn-unit.ts";
import { oneRun, ownWeight, pressed, useOf } from "./one-run.ts";

const door = (face: "left" | "right", fromMm: number): DrawnOpening => ({ face, framed: true, fromMm, widthMm: 3000 });
const loaded = (scheme: Scheme, pressurePa: number) =>
  oneRun(scheme, [ownWeight(scheme, 50_000), pressed(scheme, pressurePa)]).worsts;
const uses = (worsts: readonly PartWorst[]): Map<string, number> =>
  new Map(worsts.map((worst) => [worst.part.id, governingOf(worst).use]));

describe("utilisations", () => {
  it("never fall when the same floor is loaded more", () => {
    const scheme = drawnUnit({ openings: [door("right", 1603.5)] });
    const light = uses(loaded(scheme, 2000));
    const heavy = uses(loaded(scheme, 5000));
    expect([...heavy.keys()].toSorted()).toEqual([...light.keys()].toSorted());
    for (const [id, use] of light) expect(heavy.get(id) ?? NaN, id).toBeGreaterThanOrEqual(use * (1 - 1e-9));
  });

  it("change sides with a scheme that is mirrored, to 1 in 10⁶", () => {
    const right = uses(loaded(drawnUnit({ openings: [door("right", 1603.5)] }), 3400));
    const left = uses(loaded(drawnUnit({ openings: [door("left", 1603.5)] }), 3400));
    const mirrored = (id: string): string => id.replace(/right|left/g, (side) => (side === "right" ? "left" : "right"));
    for (const [id, use] of right)
      expect(Math.abs((left.get(mirrored(id)) ?? NaN) - use), id).toBeLessThan(1e-6 * Math.max(use, 1e-3));
  });

  it("are the same bits when worked out again", () => {
    const scheme = drawnUnit({ openings: [door("right", 4596)] });
    expect([...uses(loaded(scheme, 3400))]).toEqual([...uses(loaded(scheme, 3400))]);
  });
});

// modelling.md §3: with a framed 3 m opening the bottom rail's moment is 2.7 kN·m at mid-length and 16.3 at the quarter point
// (unframed 2.6, 24.6, and 32.8 beside the post): shear is small at mid-length and large near the posts.
describe("a framed 3 m opening", () => {
  const railUse = (fromMm: number): number =>
    useOf(loaded(drawnUnit({ openings: [door("right", fromMm)] }), 3400), "bottom side rail right");
  const [middle, quarter, end] = [railUse(4596), railUse(1603.5), railUse(400)];

  it("uses up more of the bottom rail at the quarter point than at mid-length, and most beside the post", () => {
    expect(quarter).toBeGreaterThan(2 * middle);
    expect(end).toBeGreaterThan(quarter);
  });
});
