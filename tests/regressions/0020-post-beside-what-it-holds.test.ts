import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { schemeOf } from "../support/scheme-of.ts";

// A 20 ft unit on four posts at its corners, each taking a quarter of it; one is drawn some way off the hole centre
// (±2926.5, ±1129.5 mm, half of S and P of ISO 668, from memory), on a pad of its own.
const g = { id: "g", type: "1CC" as const, x: 0, y: 0, z: 3000 };
const corners = [
  { id: "p1", x: -2926.5, y: -1129.5 },
  { id: "p2", x: -2926.5, y: 1129.5 },
  { id: "p3", x: 2926.5, y: -1129.5 },
  { id: "p4", x: 2926.5, y: 1129.5 },
];
const posts = (offMm: number) =>
  corners.map((post) => ({ ...post, x: post.x + (post.id === "p4" ? offMm : 0), foot: 0, head: 3000 }));
const drawn = (postMm: number, padMm: number, length = 600) =>
  assess(
    schemeOf({
      units: [g],
      posts: posts(postMm),
      pads: posts(postMm).map(({ id, x, y }) => ({ id: `b-${id}`, x: x + (id === "p4" ? padMm : 0), y, length })),
    }),
  );
const off = (assessment: ReturnType<typeof assess>) => factsOf(assessment, "post-off-centre");

it("a post 40 mm off the fitting it holds is told so, with the moment the run-down does not carry", () => {
  const assessment = drawn(40, 0);
  const [mark] = off(assessment);
  const forceKn = factsOf(assessment, "post-carries").find(({ id }) => id === "post-carries:p4")?.forceKn ?? 0;
  expect(forceKn).toBeGreaterThan(5);
  expect(mark).toMatchObject({
    id: "post-off-centre:p4:head",
    elements: ["p4", "g"],
    offsetMm: 40,
    verdict: "not checked",
  });
  expect(mark?.momentKnm).toBeCloseTo(forceKn * 0.04, 3);
});

it("a post 200 mm off the middle of its pad is told so, by its foot", () => {
  expect(off(drawn(0, 200))).toMatchObject([
    { id: "post-off-centre:p4:foot", elements: ["p4", "b-p4"], offsetMm: 200 },
  ]);
});

it("25 mm pass as setting out; along a strip of 3 m there is no middle to miss", () => {
  expect(off(drawn(25, 0))).toEqual([]);
  expect(off(drawn(0, 25))).toEqual([]);
  expect(off(drawn(0, 200, 3000))).toEqual([]);
});

// Two units side by side on one row of posts between them: each hole centre lies 89.5 mm (half of 2438 − 2259) to its own
// side, and with equal loads the two come down on the axis.
it("a head shared by two units alike is loaded on its axis", () => {
  const row = [g, { ...g, id: "h", y: 2438 }];
  const places = [-2926.5, 2926.5].flatMap((x) => [-1129.5, 1219, 2438 + 1129.5].map((y) => ({ x, y })));
  const named = places.map((place, at) => ({ ...place, id: `p${at}` }));
  const assessment = assess(
    schemeOf({
      units: row,
      posts: named.map((post) => ({ ...post, foot: 0, head: 3000, section: "HSS 152x152x9.5" })),
      pads: named.map((pad) => ({ ...pad, id: `b-${pad.id}` })),
    }),
  );
  expect(factsOf(assessment, "post-carries").map(({ holds }) => holds)).toContainEqual(["g", "h"]);
  expect(off(assessment)).toEqual([]);
});
