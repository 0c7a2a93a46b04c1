import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, factsOf, reactionOf, verdictOf } from "../support/marks-of.ts";
import { schemeOf } from "../support/scheme-of.ts";

// A 40 ft high cube (1AAA, 39.24 kN at 4000 kg) whose ends stand on two beams across, W18x50 (depth 18.0 in = 457.2 mm, AISC
// Manual, from memory), 8 m long and 7 m between posts on pads: the posts stand clear of what is below.
const depthMm = 457.2;
const underMm = 3200;
const cornerKn = 39.24 / 4; // 9.81
const ends = [-5992.5, 5992.5];
const beams = ends.map((x, at) => ({
  id: `m${at}`,
  from: [x, -4000, underMm] as const,
  to: [x, 4000, underMm] as const,
  section: "W18x50",
}));
const places = ends.flatMap((x, at) => [-3500, 3500].map((y, side) => ({ id: `p${at}${side}`, x, y })));
const posts = places.map((place) => ({ ...place, foot: 0, head: underMm - depthMm, section: "HSS6x6x3/8" }));
const pads = places.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));

const across = (yMm: number) =>
  assess(schemeOf({ units: [{ id: "u", type: "1AAA", x: 0, y: yMm, z: underMm }], beams, posts, pads }));

it("each corner brings 9.81 kN, each beam carries two of them: 9.81 × 2.3705 = 23.255 kN m", () => {
  const assessment = across(0);
  for (const corner of ["front-left", "front-right", "door-left", "door-right"])
    expect(bearingOf(assessment, `u:${corner}`)).toMatchObject({ on: "beam", joint: "bearing", gapMm: 0 });
  const [carries] = factsOf(assessment, "beam-carries");
  expect(carries).toMatchObject({ verdict: "not checked", spanMm: 7000, holds: ["u"] });
  expect(carries?.forceKn).toBeCloseTo(2 * cornerKn, 3);
  // Holes 2259 mm apart, so the load is 3500 − 1129.5 = 2370.5 mm from the support; no shear between the two loads.
  expect(carries?.momentKnm).toBeCloseTo((cornerKn * 2370.5) / 1000, 2);
});

it("a metre off the middle the nearer posts take 9.81 × (3370.5 + 5629.5)/7000 = 12.613 kN, the others 7.007", () => {
  // From the southern support: 3500 + 1000 − 1129.5 = 3370.5 and 3500 + 1000 + 1129.5 = 5629.5 mm.
  const assessment = across(1000);
  for (const at of [0, 1]) {
    expect(reactionOf(assessment, `p${at}1-pad`)).toBeCloseTo((cornerKn * 9000) / 7000, 3);
    expect(reactionOf(assessment, `p${at}0-pad`)).toBeCloseTo(2 * cornerKn - (cornerKn * 9000) / 7000, 3);
  }
  expect(assessment.statics.residualKn).toBe(0);
});

it("hung past a post by 2.5 m the beam would turn over it: does not work, the unit with it where it stands on it", () => {
  // Corners at 4000 ± 1129.5: 5129.5 lies past the support at 3500, so 2870.5 and 5129.5: from the northern support −629.5
  // and +1629.5 mm. The southern support would have to pull 9.81 × (1629.5 − 629.5)/7000 = 1.401 kN.
  const long = beams.map((beam) => ({ ...beam, to: [beam.to[0], 6000, underMm] as const }));
  const unit = { id: "u", type: "1AAA", x: 0, y: 4000, z: underMm } as const;
  const assessment = assess(schemeOf({ units: [unit], beams: long, posts, pads }));
  const lifts = factsOf(assessment, "beam-lifts");
  expect(lifts.map(({ verdict, tips }) => [verdict, tips])).toEqual([
    ["does not work", true],
    ["does not work", true],
  ]);
  expect(lifts[0]?.upliftKn).toBeCloseTo((cornerKn * 1000) / 7000, 3);
  // The southern end runs 500 mm past its post, a little more than the beam is deep; the northern one 2500.
  expect(factsOf(assessment, "beam-end-without-support").map(({ pastMm }) => pastMm)).toEqual([500, 2500, 500, 2500]);
  expect(assessment.statics.residualKn).toBe(0);
});

it("the load goes down beam, post and pad, each drawn with its force", () => {
  const { path } = across(0);
  const onBeam = path.filter(({ via, elementId }) => via === "beam" && elementId === "m0");
  expect(onBeam.map(({ forceTopKn }) => forceTopKn).reduce((sum, force) => sum + force, 0)).toBeCloseTo(
    2 * cornerKn,
    2,
  );
  expect(path.find(({ id }) => id === "post:p00")?.forceFootKn).toBeCloseTo(cornerKn, 3);
});

it("strength of the beams is not judged: the unit is not checked", () => {
  const assessment = across(0);
  expect(verdictOf(assessment, "u")).toBe("not checked");
  expect(factsOf(assessment, "borne-on-beam")).toMatchObject([{ places: 4, offAxisMm: 0, gapMm: 0 }]);
});

it("set in from the ends, rails stand 12.5 mm above the beams: packed there, with an overhang at either end", () => {
  const inboard = beams.map((beam) => ({
    ...beam,
    from: [beam.from[0] * 0.5, -4000, underMm] as const,
    to: [beam.to[0] * 0.5, 4000, underMm] as const,
  }));
  const half = (place: { id: string; x: number; y: number }) => ({ ...place, x: place.x * 0.5 });
  const assessment = assess(
    schemeOf({
      units: [{ id: "u", type: "1AAA", x: 0, y: 0, z: underMm }],
      beams: inboard,
      posts: posts.map((post) => ({ ...post, x: post.x * 0.5 })),
      pads: pads.map(half),
    }),
  );
  expect(factsOf(assessment, "borne-on-beam")).toMatchObject([{ places: 4, gapMm: 12.5 }]);
  expect(bearingOf(assessment, "u:left-rail:m0")).toMatchObject({ on: "beam", joint: "seat" });
  // S/2 − S/4 = 2996.25 mm past the bearing at each end.
  expect(factsOf(assessment, "overhang").map(({ lengthMm }) => lengthMm)).toEqual([2996.25, 2996.25]);
});
