import { describe, expect, it } from "vitest";
import { strength } from "../../src/strength.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// A 20 ft unit pushed 1.5 m along the one below: its front corners stand on the rails at 1.5 m from the corner posts.
// Axes of the wall posts: 2438/2 − 102/2 off the middle (HSS 102), 1500 − 5853/2 along; ISO 668 sizes from memory.
const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const upper = { id: "t", type: "1CCC" as const, x: 1500, y: 0, z: 2896 };
const at = { x: 1500 - 5853 / 2, y: 2438 / 2 - 51 };

const crushing = (posts: NonNullable<Parameters<typeof schemeOf>[0]["posts"]>) => {
  const under = posts.map(({ id, x, y }) => ({ id: `b-${id}`, x, y, top: 12.5, length: 900, width: 900 }));
  const answer = strength(schemeOf({ units: [lower, upper], posts, pads: [...padsUnder(lower), ...under] }));
  if (!answer.accepted) throw new Error("gravity alone has no hazards to refuse");
  return answer.results.filter(({ limitState }) => limitState === "sheet crushing under a seat");
};

describe("a seat on a top rail", () => {
  it("crushes the sheet below where nothing else stands under it", () => {
    expect(crushing([]).map(({ ownerId }) => ownerId)).toEqual(["g", "g"]);
  });

  it("asks nothing of the sheet where a post in the wall stands right below", () => {
    // bottom and top of the side sheet of the generic 20 ft high cube, where the rails begin: foot and head of the posts
    const posts = [-1, 1].map((side) => ({ id: `p${side + 2}`, x: at.x, y: side * at.y, foot: 170.5, head: 2830 }));
    expect(crushing(posts)).toEqual([]);
  });
});
