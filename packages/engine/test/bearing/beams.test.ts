import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { factsOf, reactionOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// W8x31: 8.00 in deep = 203.2 mm, flange 8.00 in wide = 203.2 mm (AISC Manual, from memory).
const depth = 203.2;
const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const pads = padsUnder(g1);
const loose = { units: [g1], pads };
const beam = { id: "m1", from: [9000, -3000, 3000], to: [9000, 3000, 3000] } as const;
const postAt = (id: string, y: number, head = 3000 - depth) => ({ id, x: 9000, y, foot: 0, head });
const padAt = (id: string, y: number) => ({ id, x: 9000, y });

const endsOf = (scheme: Parameters<typeof schemeOf>[0]) =>
  factsOf(assess(schemeOf(scheme)), "beam-end-without-support").map(({ supports, pastMm, verdict }) => ({
    supports,
    pastMm,
    verdict,
  }));

describe("supports of a beam", () => {
  it("are post heads under it, with posts on pads", () => {
    const posts = [postAt("p1", -2900), postAt("p2", 2900)];
    expect(endsOf({ ...loose, posts, pads: [...pads, padAt("b1", -2900), padAt("b2", 2900)], beams: [beam] })).toEqual(
      [],
    );
  });

  it("are posts its ends are framed into", () => {
    const posts = [postAt("p1", -3050, 4000), postAt("p2", 3050, 4000)];
    const scheme = { ...loose, posts, pads: [...pads, padAt("b1", -3050), padAt("b2", 3050)], beams: [beam] };
    expect(endsOf(scheme)).toEqual([]);
    expect(factsOf(assess(schemeOf(scheme)), "collision")).toEqual([]);
  });

  it("do not count where the post itself stands on nothing: one is not enough", () => {
    const posts = [postAt("p1", -2900), { ...postAt("p2", 2900), foot: 500 }];
    expect(endsOf({ ...loose, posts, pads: [...pads, padAt("b1", -2900)], beams: [beam] })).toEqual([
      { supports: 1, pastMm: 5900, verdict: "does not work" },
    ]);
  });

  it("are none further than 25 mm below it", () => {
    const posts = [postAt("p1", -2900, 3000 - depth - 26), postAt("p2", 2900, 3000 - depth - 26)];
    expect(endsOf({ ...loose, posts, pads: [...pads, padAt("b1", -2900), padAt("b2", 2900)], beams: [beam] })).toEqual([
      { supports: 0, pastMm: 6000, verdict: "does not work" },
    ]);
  });

  it("are fittings and rails of a unit below, and a beam that hangs past them overhangs", () => {
    // Across a 20 ft unit at its holes: hole centres 2259 apart; the beam 4000 long hangs 2000 − 1129.5 past either.
    const across = { id: "m1", from: [-2926.5, -2000, 2591 + depth], to: [-2926.5, 2000, 2591 + depth] } as const;
    expect(endsOf({ ...loose, beams: [across] })).toEqual([
      { supports: 2, pastMm: 870.5, verdict: "not checked" },
      { supports: 2, pastMm: 870.5, verdict: "not checked" },
    ]);
    // On the rails away from the corners, whose tops are 6 mm lower: middle of the rails at 1189.
    const onRails = { id: "m1", from: [0, -2000, 2585 + depth], to: [0, 2000, 2585 + depth] } as const;
    expect(endsOf({ ...loose, beams: [onRails] }).map(({ pastMm }) => pastMm)).toEqual([811, 811]);
  });

  it("are other beams, over which it lies or into which it frames", () => {
    const posts = [-2900, 2900].flatMap((y) =>
      [9000, 12000].map((x) => ({ id: `p${x}${y > 0 ? "n" : "s"}`, x, y, foot: 0, head: 3000 - depth })),
    );
    const under = posts.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));
    const other = { id: "m2", from: [12000, -3000, 3000], to: [12000, 3000, 3000] } as const;
    const over = { id: "m3", from: [8900, 0, 3000 + depth], to: [12100, 0, 3000 + depth] } as const;
    const into = { id: "m3", from: [9101.6, 0, 3000], to: [11898.4, 0, 3000] } as const;
    for (const third of [over, into]) {
      const scheme = { ...loose, posts, pads: [...pads, ...under], beams: [beam, other, third] };
      expect(endsOf(scheme)).toEqual([]);
      expect(factsOf(assess(schemeOf(scheme)), "collision")).toEqual([]);
    }
  });

  it("do not hold each other up in a ring: two beams framed into each other alone have none", () => {
    // Each end meets the side of the other, 500 mm from its end.
    const ring = [
      { id: "m1", from: [9000, 0, 3000], to: [12000, 0, 3000] },
      { id: "m2", from: [11500, 101.6, 3000], to: [11500, 3000, 3000] },
    ] as const;
    const facts = endsOf({ ...loose, beams: ring });
    expect(facts.map(({ supports }) => supports)).toEqual([0, 0]);
  });
});

describe("what bears on a beam", () => {
  it("hands a post's load on by the lever: a post at a quarter of the span gives a quarter to the far end", () => {
    // A 20 ft unit on four posts, two of them on pads, two on a beam across under its western end.
    const z = 3000;
    const unit = { id: "u", type: "1CC", x: 0, y: 0, z } as const;
    const corners = [-1129.5, 1129.5];
    const girder = { id: "m1", from: [-2926.5, -1129.5 - 500, 1000], to: [-2926.5, 1129.5 + 500, 1000] } as const;
    const posts = [
      ...corners.map((y, at) => ({ id: `e${at}`, x: 2926.5, y, foot: 0, head: z })),
      ...corners.map((y, at) => ({ id: `w${at}`, x: -2926.5, y, foot: 1000, head: z })),
    ];
    const scheme = schemeOf({
      units: [unit],
      posts,
      beams: [girder],
      pads: [
        ...corners.map((y, at) => ({ id: `eb${at}`, x: 2926.5, y })),
        { id: "s", x: -2926.5, y: -1629.5 + 100, top: 1000 - depth, width: 200 },
        { id: "n", x: -2926.5, y: 1629.5 - 100, top: 1000 - depth, width: 200 },
      ],
    });
    const assessment = assess(scheme);
    // Tare in the middle of 2150…2400 kg: 2275 × 9.81/4 = 5.579 kN at each corner; symmetric on the beam.
    const cornerKn = (2275 * 9.81) / 4000;
    expect(reactionOf(assessment, "s")).toBeCloseTo(cornerKn, 3);
    expect(reactionOf(assessment, "n")).toBeCloseTo(cornerKn, 3);
    expect(factsOf(assessment, "beam-carries")[0]?.holds).toEqual(["w0", "w1"]);
    expect(assessment.statics.residualKn).toBe(0);
  });

  it("falls with what leads nowhere: a unit on beams without support has nothing under it", () => {
    const girders = [-2926.5, 2926.5].map((x, at) => ({
      id: `m${at}`,
      from: [x, -2000, 3000] as const,
      to: [x, 2000, 3000] as const,
    }));
    const assessment = assess(schemeOf({ units: [{ ...g1, z: 3000 }], beams: girders }));
    expect(factsOf(assessment, "mechanism").map(({ direction }) => direction)).toEqual(["falls"]);
    expect(factsOf(assessment, "borne-on-beam")).toEqual([]);
  });
});

describe("a beam drawn into other things", () => {
  const through = (from: readonly [number, number, number], to: readonly [number, number, number], cuts = true) =>
    factsOf(
      assess(
        schemeOf({
          ...loose,
          beams: [{ id: "m1", from, to }],
          ...(cuts
            ? {}
            : {
                cuts: ["left", "right"].map((face, at) => ({
                  id: `d${at}`,
                  in: "g1",
                  face: face === "left" ? ("left" as const) : ("right" as const),
                  at: 2000,
                  sill: 200,
                  width: 2000,
                  height: 2200,
                })),
              }),
        }),
      ),
      "beam-through-unit",
    ).map((fact) => fact.through);

  it("meets members of a unit by their height: top rail, bottom rail, corner post, else sheet", () => {
    // Height 2591: top rail 60 deep under 2585, bottom rail 158 above 12.5.
    expect(through([0, -3000, 2580], [0, 3000, 2580])).toEqual(["top side rail"]);
    expect(through([0, -3000, 300], [0, 3000, 300])).toEqual(["bottom side rail"]);
    expect(through([-2926.5, -3000, 1500], [-2926.5, 3000, 1500])).toEqual(["corner post"]);
    expect(through([0, -3000, 1500], [0, 3000, 1500])).toEqual(["sheet"]);
  });

  it("passes through an opening on both sides, lies inside the room, or on top of it without a mark", () => {
    expect(through([0, -3000, 1500], [0, 3000, 1500], false)).toEqual([]);
    expect(through([-1500, 0, 2000], [1500, 0, 2000])).toEqual([]);
    expect(through([0, -3000, 2585 + depth], [0, 3000, 2585 + depth])).toEqual([]);
  });

  it("collides with a post it crosses, a pad it is sunk in and a beam it crosses at one height", () => {
    const posts = [{ id: "p1", x: 9000, y: 0, foot: 0, head: 4000 }];
    const other = { id: "m2", from: [8000, 1500, 3000], to: [10000, 1500, 3000] } as const;
    const sunk = { id: "b9", x: 9000, y: -2500, top: 2900 };
    const scheme = schemeOf({ ...loose, posts, beams: [beam, other], pads: [...pads, padAt("b1", 0), sunk] });
    expect(factsOf(assess(scheme), "collision").map(({ elements }) => elements.join())).toEqual([
      "m1,b9",
      "m1,m2",
      "m1,p1",
    ]);
  });
});

describe("a beam that runs along under a top rail", () => {
  // The left side of the lower of two 40 ft units (1AA, 2591 high) is out over 8 m; the upper one is pushed 5000 mm along, so
  // that its front corners come down in the middle of the opening. Top rail 60 deep under 2585: its underside at 2525.
  const lower = { id: "g1", type: "1AA", x: 0, y: 0 } as const;
  const upper = { ...lower, id: "f1", x: 5000, z: 2591 } as const;
  const wall = {
    id: "d1",
    in: "g1",
    face: "left",
    use: "open-wall",
    at: 2096,
    sill: 175,
    width: 8000,
    height: 2350,
  } as const;
  const header = { id: "m1", from: [-3500, 1189, 2525], to: [3500, 1189, 2525], section: "HSS4x4x1/4" } as const;
  // HSS4x4x1/4 is 101.6 mm deep.
  const posts = [-3000, 3000].map((x, at) => ({
    id: `p${at}`,
    x,
    y: 1189,
    foot: 0,
    head: 2525 - 101.6,
    section: "HSS4x4x1/4",
  }));
  const under = posts.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));
  const scheme = {
    units: [lower, upper],
    pads: [...padsUnder(lower), ...under],
    cuts: [wall],
    posts,
    beams: [header],
  };

  const postKn = ({ path }: ReturnType<typeof assess>, id: string) =>
    path.find((stretch) => stretch.id === `post:${id}`)?.forceFootKn ?? 0;

  it("takes what comes down over it and gives it to its posts by the lever", () => {
    const assessment = assess(schemeOf(scheme));
    // The front corners of the upper unit lie at 5000 − 5992.5 = −992.5 from the middle of the lower: 2007.5 of 6000 from the
    // western post.
    const tailKn = assessment.bearings.find(({ id }) => id === "f1:front-left")?.forceKn ?? NaN;
    expect(tailKn).toBeGreaterThan(0);
    expect(postKn(assessment, "p1")).toBeCloseTo((tailKn * 2007.5) / 6000, 2);
    expect(postKn(assessment, "p0")).toBeCloseTo((tailKn * 3992.5) / 6000, 2);
    expect(factsOf(assessment, "beam-carries")).toMatchObject([{ holds: ["g1"], spanMm: 6000 }]);
    expect(assessment.statics.residualKn).toBe(0);
  });

  it("lies in the opening, not through the unit, and its posts hold it", () => {
    const assessment = assess(schemeOf(scheme));
    expect(factsOf(assessment, "beam-through-unit")).toEqual([]);
    expect(factsOf(assessment, "post-carries").map(({ holds }) => holds)).toEqual([["m1"], ["m1"]]);
    expect(factsOf(assessment, "collision")).toEqual([]);
  });

  it("holds nothing 26 mm below the rail", () => {
    const lowered = { ...header, from: [-3500, 1189, 2499], to: [3500, 1189, 2499] } as const;
    const assessment = assess(
      schemeOf({ ...scheme, beams: [lowered], posts: posts.map((post) => ({ ...post, head: post.head - 26 })) }),
    );
    expect(factsOf(assessment, "beam-holds-nothing")).toHaveLength(1);
    expect(postKn(assessment, "p1")).toBe(0);
  });
});
