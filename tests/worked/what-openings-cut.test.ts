import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 40 ft high cube, 12 192 × 2438 × 2896. Generic specification (common practice): bottom rail 162 deep from 12.5 to
// 174.5; top rail 60 deep below 2896 − 6, so from 2830; corner posts 160 wide on the sides, at the front 150 wide.
const forty = { id: "g1", type: "1AAA", x: 0, y: 0 } as const;
const pads = padsUnder(forty);
type Cut = {
  face: "left" | "right" | "front" | "door" | "roof" | "floor";
  at: number;
  sill: number;
  width: number;
  height: number;
};
const withCuts = (...cuts: Cut[]) =>
  assess(schemeOf({ units: [forty], cuts: cuts.map((cut, at) => ({ ...cut, id: `d${at}`, in: "g1" })), pads }));
const membersCut = (cut: Cut) =>
  factsOf(withCuts(cut), "member-cut")
    .map(({ member }) => member)
    .toSorted();

it("an opening between posts and rails stays in the sheet and is not checked", () => {
  const assessment = withCuts({ face: "left", at: 160, sill: 174.5, width: 11872, height: 2655.5 });
  expect(factsOf(assessment, "member-cut")).toEqual([]);
  expect(verdictOf(assessment, "g1")).toBe("not checked");
});

it.each([
  ["top side rail", { face: "left", at: 5000, sill: 600, width: 1000, height: 2235 }],
  ["bottom side rail", { face: "right", at: 5000, sill: 170, width: 1000, height: 2000 }],
  ["corner post", { face: "left", at: 150, sill: 600, width: 1000, height: 1000 }],
  ["corner post", { face: "right", at: 11100, sill: 600, width: 1000, height: 1000 }],
  ["corner post", { face: "front", at: 140, sill: 600, width: 1000, height: 1000 }],
  ["top end rail", { face: "front", at: 700, sill: 600, width: 1000, height: 2240 }],
  ["bottom end rail", { face: "front", at: 700, sill: 100, width: 1000, height: 1000 }],
  ["door sill", { face: "door", at: 700, sill: 100, width: 1000, height: 1000 }],
  ["door header", { face: "door", at: 700, sill: 600, width: 1000, height: 2200 }],
  ["top side rail", { face: "roof", at: 5000, sill: 50, width: 1000, height: 1000 }],
  ["bottom side rail", { face: "floor", at: 5000, sill: 1500, width: 1000, height: 900 }],
] as const)("an opening that takes a piece of the %s destroys the unit as structure: %j", (member, cut) => {
  expect(membersCut(cut)).toEqual([member]);
  expect(verdictOf(withCuts(cut), "g1")).toBe("does not work");
});

it("the whole door end within its frame cuts no member: 2286 mm between posts 76 mm wide", () => {
  expect(membersCut({ face: "door", at: 76, sill: 162.5, width: 2286, height: 2566 })).toEqual([]);
});

it("an opening beyond the outline of its face does not work", () => {
  expect(
    factsOf(withCuts({ face: "left", at: 11500, sill: 600, width: 1000, height: 1000 }), "opening-off-face")[0]
      ?.verdict,
  ).toBe("does not work");
});

it("two openings over one another on one face do not work; touching they do", () => {
  const door = { face: "left", at: 2000, sill: 200, width: 1000, height: 2000 } as const;
  expect(factsOf(withCuts(door, { ...door, at: 2900 }), "openings-overlap")).toHaveLength(1);
  expect(factsOf(withCuts(door, { ...door, at: 3000 }), "openings-overlap")).toEqual([]);
  expect(factsOf(withCuts(door, { ...door, face: "right" }), "openings-overlap")).toEqual([]);
});

// IBC 2021 3115.8.5.3, from memory: openings at most 50 % of the wall's length, 12 192/2 = 6096 mm; pieces of wall under
// 4 ft = 1219 mm do not count.
it.each([
  [3048, 6096, "keeps both"],
  [3048, 6097, "more than half cut"],
  [1219, 3000, "keeps both"],
  [1218, 3000, "pier under 4 ft"],
  [1000, 6200, "more than half cut and pier under 4 ft"],
] as const)("an opening at %i mm, %i mm wide: %s", (at, width, wallRule) => {
  const [opening] = factsOf(withCuts({ face: "left", at, sill: 600, width, height: 1000 }), "opening-in-sheet");
  expect(opening).toMatchObject({ wallRule, verdict: "not checked", toFrontPostMm: at - 160 });
  expect(opening?.cutShare).toBeCloseTo(width / 12192, 3);
});

it("windows over one another count once in the length of the wall", () => {
  const low = { face: "left", at: 4000, sill: 300, width: 3000, height: 900 } as const;
  const [first] = factsOf(withCuts(low, { ...low, sill: 1500 }), "opening-in-sheet");
  expect(first?.cutShare).toBeCloseTo(3000 / 12192, 3);
});

it("a stair hole 3.0 m long in the floor cuts ten cross members at 300 mm centres", () => {
  // (3000 + flange 45)/300 = 10.15: ten, or eleven where the hole lies just so; from 1200 the centres 1250…4250 but the
  // last, whose flange starts at 4227.5, lie within 1200…4200.
  expect(
    factsOf(withCuts({ face: "floor", at: 1200, sill: 1000, width: 3000, height: 1000 }), "cross-members-cut").map(
      ({ count }) => count,
    ),
  ).toEqual([10]);
});

it("a unit over a cut corner post is not said to work, though it is whole and corner on corner itself", () => {
  const assessment = assess(
    schemeOf({
      units: [forty, { ...forty, id: "f1", z: 2896 }],
      cuts: [{ id: "d1", in: "g1", face: "left", at: 0, sill: 200, width: 1000, height: 2000 }],
      pads,
    }),
  );
  expect(verdictOf(assessment, "g1")).toBe("does not work");
  expect(factsOf(assessment, "below-not-settled").map(({ elements }) => elements)).toEqual([["f1", "g1"]]);
  expect(verdictOf(assessment, "f1")).toBe("not checked");
});

it("a corner over a piece of top rail that an opening took finds nothing: no way to the ground there", () => {
  // A 20 ft unit stands along the west half of g1 with its eastern corners over g1's rails at 5955.5 mm; the opening
  // takes the left rail from 5400 to 6600.
  const assessment = assess(
    schemeOf({
      units: [forty, { id: "f1", type: "1CCC", x: -3067, y: 0, z: 2896 }],
      cuts: [{ id: "d1", in: "g1", face: "left", at: 5400, sill: 600, width: 1200, height: 2296 }],
      pads,
    }),
  );
  expect(bearingOf(assessment, "f1:door-left")).toMatchObject({ on: "sheet", joint: "none", forceKn: 0 });
  expect(factsOf(assessment, "load-over-opening")).toMatchObject([
    { railCut: true, verdict: "does not work", elements: ["d1", "g1", "f1"] },
  ]);
});
