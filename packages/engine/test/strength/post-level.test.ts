import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { schemeActions } from "../../src/strength/scheme-actions.ts";
import { bearingForce, modelledBearings } from "../../src/strength/modelled-bearings.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis, oneRun, ownWeight } from "./one-run.ts";

const drawn = drawnUnit({
  openings: [{ face: "right", framed: false, use: "open-wall", fromMm: 200, widthMm: 11_792 }],
  posts: [4000, 8000],
});
const measured = (levelErrorUm: number): Scheme =>
  inOrder({ ...drawn, posts: drawn.posts.map((post, n) => (n === 0 ? { ...post, levelErrorUm } : post)) });

const movementsOf = (scheme: Scheme): ActionCase[] => {
  const actions = schemeActions(scheme, analyse(scheme), basis);
  if (!actions.accepted) throw new Error("the sample is accepted");
  return [...actions.movements];
};

describe("a post whose level was measured", () => {
  it("is one case of movement as built; one that was not moves with its pad", () => {
    const posts = (scheme: Scheme) => movementsOf(scheme).filter(({ id }) => /^T c\d /.test(id));
    expect(posts(inOrder(drawn))).toEqual([]);
    expect(posts(measured(-10_000))).toEqual([
      { id: "T c1 as built", symbol: "T", loads: [{ kind: "movement", elementId: "c1", downMm: 10 }] },
    ]);
  });

  it("that stands low takes less, and hands it to its neighbours", () => {
    const reactions = (levelErrorUm: number): number[] => {
      const scheme = measured(levelErrorUm);
      const moved = movementsOf(scheme).find(({ id }) => id === "T c1 as built");
      if (moved === undefined) throw new Error("the post is moved");
      const { set, solved } = oneRun(scheme, [ownWeight(scheme, 200_000), moved]);
      const bearings = modelledBearings(set.built, analyse(scheme).structure.building);
      return ["q1", "q2"].map((pad) =>
        bearings
          .filter(({ planned: { below } }) => "ground" in below && below.ground === pad)
          .reduce((sum, bearing) => sum + bearingForce(bearing, solved)[2], 0),
      );
    };
    const [[level = 0, other = 0], [low = 0, more = 0]] = [reactions(0), reactions(-10_000)];
    expect(level).toBeGreaterThan(10_000);
    expect(low).toBeLessThan(0.95 * level);
    expect(more).toBeGreaterThan(other);
  });
});
