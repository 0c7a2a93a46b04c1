import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf, reactionOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 40 ft high cube with its whole left side out. A 20 ft unit turned across it at mid-length puts load on the top rail
// over the opening. Two posts stand in the opening at the third points of the hole spacing, 11 985/3 = 3995 mm from each
// corner, on the bottom rail with their heads under the top rail: 12.5 + 162 = 174.5 mm to 2896 − 6 − 60 = 2830 mm.
const railTop = 174.5;
const underTopRail = 2830;
const third = 11985 / 3;
const railAxisY = 1219 - 30;
const forty = { id: "g1", type: "1AAA", x: 0, y: 0 } as const;
const openSide = {
  id: "o1",
  in: "g1",
  face: "left",
  use: "open-wall",
  at: 160,
  sill: railTop,
  width: 11872,
  height: underTopRail - railTop,
} as const;
// Turned 90°, its middle over the middle of g1: its left and right bottom rails cross at x = −1195 and +1195.
const across = { id: "t1", type: "1CCC", x: 0, y: 0, z: 2896, turn: 90 } as const;
const posts = [-1, 1].map((side) => ({
  id: side < 0 ? "p1" : "p2",
  x: (side * third) / 2,
  y: railAxisY,
  foot: railTop,
  head: underTopRail,
}));
const padsUnderPosts = posts.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));

it("with pads under the rail each post has its own way to the ground and takes the load nearest to it", () => {
  const assessment = assess(
    schemeOf({ units: [forty, across], cuts: [openSide], posts, pads: [...padsUnder(forty), ...padsUnderPosts] }),
  );
  expect(factsOf(assessment, "post-without-ground")).toEqual([]);
  // t1: tare middle of 2300…2550 = 2425 kg → 23.789 kN, a quarter, 5.947 kN, at each crossing. Both crossings of the
  // left rail lie between the posts at ±1997.5, so all of it goes to the posts: 5.947 kN each, none to the corners.
  expect(factsOf(assessment, "post-carries").map(({ elements }) => elements[0])).toEqual(["p1", "p2"]);
  for (const { forceKn } of factsOf(assessment, "post-carries")) expect(forceKn).toBeCloseTo(23.789 / 4, 2);
  expect(
    assessment.path.filter(
      ({ id, forceTopKn }) => id.startsWith("rail:g1:left") && id.includes("-left") && forceTopKn > 0.001,
    ),
  ).toEqual([]);
  expect(assessment.statics.residualKn).toBe(0);
});

it("the side out, its posts and its rails stay not checked: no strength is judged", () => {
  const assessment = assess(
    schemeOf({ units: [forty, across], cuts: [openSide], posts, pads: [...padsUnder(forty), ...padsUnderPosts] }),
  );
  expect(assessment.verdict).toBe("not checked");
  expect(verdictOf(assessment, "g1")).toBe("not checked");
  expect(factsOf(assessment, "load-over-opening").map(({ verdict }) => verdict)).toEqual(["not checked"]);
});

it("without pads the posts stand on an unsupported bottom rail: they do not work and take nothing", () => {
  const assessment = assess(schemeOf({ units: [forty, across], cuts: [openSide], posts, pads: padsUnder(forty) }));
  expect(factsOf(assessment, "post-without-ground").map(({ under, verdict }) => [under, verdict])).toEqual([
    ["rail", "does not work"],
    ["rail", "does not work"],
  ]);
  expect(factsOf(assessment, "post-carries")).toEqual([]);
  expect(assessment.verdict).toBe("does not work");
});

it("a post lifted off its pad by 30 mm stands on nothing; by 20 mm it is grouted", () => {
  const outside = (foot: number) =>
    assess(
      schemeOf({
        units: [{ ...forty, z: 3000 }],
        posts: padsUnder(forty).map((pad, at) => ({ id: `p${at}`, x: pad.x, y: pad.y, foot, head: 3000 })),
        pads: padsUnder(forty),
      }),
    );
  expect(factsOf(outside(20), "post-without-ground")).toEqual([]);
  expect(factsOf(outside(30), "post-without-ground").map(({ under }) => under)).toEqual(["air", "air", "air", "air"]);
});

it("a unit on four posts alone gives each pad a quarter, and nothing drawn holds it sideways", () => {
  const pads = padsUnder(forty);
  const assessment = assess(
    schemeOf({
      units: [{ ...forty, z: 3000 }],
      posts: pads.map((pad, at) => ({ id: `p${at}`, x: pad.x, y: pad.y, foot: 0, head: 3000 })),
      pads,
    }),
  );
  for (const { id } of pads) expect(reactionOf(assessment, id)).toBeCloseTo(39.24 / 4, 3);
  expect(factsOf(assessment, "mechanism").map(({ direction, verdict }) => [direction, verdict])).toEqual([
    ["slides", "not checked"],
  ]);
});

it("when its posts stand on nothing the unit falls, and its load is the residual", () => {
  const assessment = assess(
    schemeOf({
      units: [{ ...forty, z: 3000 }],
      posts: padsUnder(forty).map((pad, at) => ({ id: `p${at}`, x: pad.x, y: pad.y, foot: 100, head: 3000 })),
    }),
  );
  expect(factsOf(assessment, "mechanism").map(({ direction, verdict }) => [direction, verdict])).toEqual([
    ["falls", "does not work"],
  ]);
  expect(assessment.statics.residualKn).toBeCloseTo(39.24, 6);
});

it("a head up to 25 mm below the top rail is packed and carries, 26 mm below it meets nothing", () => {
  const headAt = (gapMm: number) =>
    assess(
      schemeOf({
        units: [forty, across],
        cuts: [openSide],
        posts: posts.map((post) => ({ ...post, head: underTopRail - gapMm })),
        pads: [...padsUnder(forty), ...padsUnderPosts],
      }),
    );
  expect(factsOf(headAt(25), "post-carries")).toHaveLength(2);
  expect(factsOf(headAt(26), "post-carries")).toEqual([]);
  expect(factsOf(headAt(26), "post-holds-nothing")).toHaveLength(2);
});

it("a post on the top rail of a unit below has a way down, but along the rail: not checked, and its load reaches the ground", () => {
  // f1 stands 1 m above g1's roof on four posts: two on g1's rails, 1000 mm in from its western castings, two on pads
  // beyond its eastern end.
  const twenty = { id: "g1", type: "1CCC", x: 0, y: 0 } as const;
  const above = { ...twenty, id: "f1", x: 1000, z: 2896 + 1000 };
  const heads = padsUnder(above).map(({ x, y }, at) => ({ id: `p${at}`, x, y, foot: x < 0 ? 2890 : 0, head: above.z }));
  const railAxis = heads.map((post) => (post.foot > 0 ? { ...post, y: Math.sign(post.y) * railAxisY } : post));
  const assessment = assess(
    schemeOf({
      units: [twenty, above],
      posts: railAxis,
      pads: [
        ...padsUnder(twenty),
        ...railAxis.filter(({ foot }) => foot === 0).map(({ id, x, y }) => ({ id: `${id}-pad`, x, y })),
      ],
    }),
  );
  expect(factsOf(assessment, "post-without-ground").map(({ under, verdict }) => [under, verdict])).toEqual([
    ["rail", "not checked"],
    ["rail", "not checked"],
  ]);
  expect(assessment.statics.residualKn).toBe(0);
  // Each post takes a quarter of 23.789 kN; its foot is 1000 mm from the casting on a span of 5853 mm: lever rule.
  const far = assessment.path.find(({ id }) => id.startsWith("rail:g1:left:p") && id.endsWith("door-left"));
  expect(far?.forceTopKn).toBeCloseTo(((23.789 / 4) * 1000) / 5853, 2);
});
