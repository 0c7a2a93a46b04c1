import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { usualAssumptions } from "../../src/model/model-assumptions.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { ownWeight } from "../strength/one-run.ts";

const onPost = (elementId: string, zN: number): ActionCase => ({
  id: "steel",
  symbol: "D",
  loads: [{ kind: "point", elementId, at: { xMm: -2000, yMm: -1189, zMm: 1400 }, xN: 0, yN: 0, zN }],
});

/** What the ground gives back, N. */
function upFrom(scheme: Scheme, actions: readonly ActionCase[]): number {
  const combos = { all: Object.fromEntries(actions.map(({ id }) => [id, 1])) };
  // tied, so that pinned posts lean on a unit that is held elsewhere
  const built = buildModel(analyse(scheme), actions, combos, { ...usualAssumptions, holds: "tied" });
  const answer = solveBuilding(built.model, condensationCache(1e8)).combos["all"];
  if (answer === undefined || "refused" in answer) throw new Error(answer?.refused ?? "no answer");
  return Object.values(answer.frame.reactions).reduce((sum, [, , z = 0]) => sum + z, 0);
}

describe("what acts on an added post", () => {
  it("comes down with the container whose wall it stands in", () => {
    const scheme = drawnUnit({
      openings: [{ face: "right", framed: true, fromMm: 300, widthMm: 11_592, use: "open-wall" }],
      posts: [4096, 8096],
    });
    const actions = [ownWeight(scheme, 40_000), onPost("c1", -1500)];
    expect(
      buildModel(analyse(scheme), [], {})
        .plan.inWalls.get("u1")
        ?.map(({ postId }) => postId),
    ).toContain("c1");
    expect(upFrom(scheme, actions)).toBeCloseTo(41_500, 2);
  });

  // The front end stands on two piers of 3 m, the door end on two posts.
  it("comes down through a post by itself", () => {
    const plain = drawnUnit({ type: "1CC" });
    const raised = { ...plain, containers: plain.containers.map((one) => ({ ...one, zUm: 3_000_000 })) };
    const isDoor = ({ id }: { readonly id: string }): boolean => id.includes("door");
    const posts = plain.pads.filter(isDoor).map(({ xUm, yUm }, n): Scheme["posts"][number] => ({
      id: `c${n + 1}`,
      tag: "C",
      xUm,
      yUm,
      baseZUm: 0,
      topZUm: 3_000_000,
      turnMdeg: 0,
      section: "HSS4x4x1/4",
    }));
    const pads = plain.pads.map((pad) => (isDoor(pad) ? pad : { ...pad, topZUm: 3_000_000, depthUm: 3_400_000 }));
    const scheme: Scheme = { ...raised, posts, pads };
    expect(buildModel(analyse(scheme), [], {}).plan.freePosts).toContain("c1");
    expect(upFrom(scheme, [ownWeight(scheme, 20_000), onPost("c1", -1500)])).toBeCloseTo(21_500, 2);
  });
});
