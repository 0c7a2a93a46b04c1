import { assess } from "@cornerway/engine";
import { MarkFact, strengthFacts, type Mark, type MarkKind, type Scheme, type StrengthKind } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { factsOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const f1 = { ...g1, id: "f1", z: 2591 } as const;
const pads = padsUnder(g1);
const window = { id: "d1", in: "g1", face: "left", at: 2000, sill: 900, width: 1500, height: 1000 } as const;
const onGround = { units: [g1], pads };

// Two W8x31 across (8.00 in = 203.2 mm deep) under the ends of a 20 ft unit, on pads.
const girders = [-2926.5, 2926.5].map((x, at) => ({
  id: `m${at}`,
  from: [x, -2000, 500] as const,
  to: [x, 6000, 500] as const,
}));
const girderPads = (ys: readonly number[]) =>
  girders.flatMap(({ id, from: [x] }) => ys.map((y, at) => ({ id: `${id}-pad-${at}`, x, y, top: 500 - 203.2 })));
const raised = { units: [{ ...g1, z: 500 }], beams: girders, pads: girderPads([-1800, 5800]) };
const spare = { id: "m9", from: [9000, -2000, 500], to: [9000, 2000, 500] } as const;
// The front fittings of a unit pushed 1000 mm come down at 1000 − 2926.5 on the rails, whose middle is at 1189.
const pushed = { units: [g1, { ...f1, x: 1000 }], pads };
const seat = { id: "s1", upper: "f1", lower: "g1", x: -1926.5, y: 1189, packing: 6 };
const g2 = { ...g1, id: "g2", y: 2438 + 50 } as const;
const pair = { units: [g1, g2], pads: [...pads, ...padsUnder(g2)].map((pad) => ({ ...pad, width: 200 })) };
const tie = { id: "t1", a: "g1", b: "g2", at: [0, 1219 + 25, 2591 - 30] } as const;

/** The smallest scheme found for each kind of mark, with the verdict it must have. */
const cases: Record<Exclude<MarkKind, StrengthKind>, [Scheme, Mark["verdict"]]> = {
  "borne-on-fittings": [schemeOf(onGround), "works as built"],
  "below-not-settled": [schemeOf({ units: [g1, f1], pads, cuts: [{ ...window, at: 0 }] }), "not checked"],
  overhang: [schemeOf({ units: [g1, { ...f1, x: 1000 }], pads }), "not checked"],
  "borne-on-rail": [schemeOf({ units: [g1, { ...f1, x: 1000 }], pads }), "not checked"],
  "made-connection": [schemeOf({ units: [g1, { ...f1, x: 20 }], pads }), "not checked"],
  "corner-on-air": [schemeOf({ units: [{ ...g1, z: 50 }], pads: padsUnder(g1, 50).slice(1) }), "not checked"],
  "tips-over": [schemeOf({ units: [g1, { ...f1, x: 3500 }], pads }), "does not work"],
  "near-tipping": [schemeOf({ units: [g1, { ...f1, x: 2800 }], pads }), "not checked"],
  rocks: [schemeOf({ units: [g1], pads: pads.map((pad, at) => ({ ...pad, top: at === 0 ? -10 : 0 })) }), "not checked"],
  "stands-clear": [schemeOf({ units: [{ ...g1, z: 10 }], pads }), "not checked"],
  "off-its-pad": [schemeOf({ units: [g1], pads: pads.map((pad) => ({ ...pad, width: 100 })) }), "not checked"],
  mechanism: [schemeOf({ units: [{ ...g1, z: 5000 }] }), "does not work"],
  collision: [schemeOf({ units: [g1, { ...g1, id: "g2", y: 2400 }], pads }), "does not work"],
  "member-cut": [schemeOf({ ...onGround, cuts: [{ ...window, sill: 100 }] }), "does not work"],
  "load-over-opening": [
    schemeOf({ units: [g1, { ...f1, x: 1000 }], pads, cuts: [{ ...window, at: 800 }] }),
    "not checked",
  ],
  "opening-in-sheet": [schemeOf({ ...onGround, cuts: [window] }), "not checked"],
  "wall-out": [schemeOf({ ...onGround, cuts: [{ ...window, use: "open-wall" }] }), "not checked"],
  "openings-overlap": [schemeOf({ ...onGround, cuts: [window, { ...window, id: "d2", at: 2500 }] }), "does not work"],
  "opening-off-face": [schemeOf({ ...onGround, cuts: [{ ...window, at: 5000 }] }), "does not work"],
  "hatch-blocked": [
    schemeOf({ units: [g1, f1], pads, cuts: [{ ...window, face: "roof", use: "hatch", sill: 700 }] }),
    "not checked",
  ],
  "cross-members-cut": [schemeOf({ ...onGround, cuts: [{ ...window, face: "floor", sill: 700 }] }), "not checked"],
  "post-without-ground": [
    schemeOf({ ...onGround, posts: [{ id: "p1", x: 9000, y: 0, foot: 500, head: 3000 }] }),
    "does not work",
  ],
  "post-holds-nothing": [
    schemeOf({
      units: [g1],
      pads: [...pads, { id: "b9", x: 9000, y: 0 }],
      posts: [{ id: "p1", x: 9000, y: 0, foot: 0, head: 3000 }],
    }),
    "not checked",
  ],
  "post-carries": [
    schemeOf({
      units: [g1, { ...f1, x: 3500 }],
      pads: [...pads, { id: "b9", x: 3500 + 2926.5, y: 1129.5 }],
      posts: [{ id: "p1", x: 3500 + 2926.5, y: 1129.5, foot: 0, head: 2591 }],
    }),
    "not checked",
  ],
  "post-off-centre": [
    schemeOf({
      units: [g1, { ...f1, x: 3500 }],
      pads: [...pads, { id: "b9", x: 3500 + 2926.5, y: 1129.5 }],
      posts: [{ id: "p1", x: 3500 + 2926.5 - 40, y: 1129.5, foot: 0, head: 2591 }],
    }),
    "not checked",
  ],
  "post-through-opening": [
    schemeOf({
      ...onGround,
      cuts: [window],
      posts: [{ id: "p1", x: -3029 + 2700, y: 1219 + 40, foot: 0, head: 2591 }],
    }),
    "not checked",
  ],
  "post-through-unit": [
    schemeOf({ ...onGround, posts: [{ id: "p1", x: 0, y: 1190, foot: 0, head: 2000 }] }),
    "does not work",
  ],
  "below-ground": [schemeOf({ units: [{ ...g1, z: -500 }], pads: padsUnder(g1, -500) }), "not checked"],
  "pad-missing": [schemeOf({ units: [g1] }), "not checked"],
  "pad-off-ground": [schemeOf({ units: [{ ...g1, z: 3000 }], pads: padsUnder(g1, 3000) }), "does not work"],
  "pad-holds-nothing": [schemeOf({ units: [g1], pads: [...pads, { id: "b9", x: 9000, y: 0 }] }), "not checked"],
  "borne-on-beam": [schemeOf(raised), "not checked"],
  "beam-carries": [schemeOf(raised), "not checked"],
  "beam-holds-nothing": [
    schemeOf({ units: [g1], pads: [...pads, { id: "b8", x: 9000, y: -1800, top: 296.8 }], beams: [spare] }),
    "not checked",
  ],
  "beam-end-without-support": [
    schemeOf({ units: [g1], pads: [...pads, { id: "b8", x: 9000, y: -1800, top: 296.8 }], beams: [spare] }),
    "does not work",
  ],
  "beam-lifts": [
    schemeOf({ units: [{ ...g1, y: 2000, z: 500 }], beams: girders, pads: girderPads([-1800, 1800]) }),
    "does not work",
  ],
  "beam-through-unit": [
    schemeOf({ ...onGround, beams: [{ id: "m1", from: [0, -2000, 300], to: [0, 2000, 300] }] }),
    "does not work",
  ],
  "seat-without-bearing": [schemeOf({ ...pushed, seats: [{ ...seat, x: 0, y: 0 }] }), "does not work"],
  "seat-packing": [schemeOf({ ...pushed, seats: [{ ...seat, packing: 12 }] }), "not checked"],
  "seat-off-rail": [schemeOf({ ...pushed, seats: [{ ...seat, width: 200 }] }), "not checked"],
  "tie-joins": [schemeOf({ ...pair, ties: [tie] }), "not checked"],
  "tie-cannot-serve": [schemeOf({ ...pair, ties: [{ ...tie, at: [0, 1219 + 25, 1200] }] }), "not checked"],
  "lock-cannot-serve": [
    schemeOf({ ...pushed, locks: [{ id: "l1", in: "f1", fitting: "front-left", kind: "lock" }] }),
    "does not work",
  ],
  "section-unknown": [
    schemeOf({ ...onGround, posts: [{ id: "p1", x: 9000, y: 0, foot: 0, head: 3000, section: "W99x1" }] }),
    "not checked",
  ],
  "override-misfits": [
    schemeOf({ ...onGround, found: [{ id: "v1", elementId: "g1", yieldMpa: 300, source: "mill certificate" }] }),
    "not checked",
  ],
  "load-off-unit": [
    schemeOf({ ...onGround, put: [{ id: "q1", in: "g1", x: -500, y: 1000, downN: 1000 }] }),
    "does not work",
  ],
};

const ofStrength = new Set<string>(strengthFacts.map((option) => option.shape.kind.value));
const isOfStrength = (kind: MarkKind): kind is StrengthKind => ofStrength.has(kind);
/** What strength notes has tests of its own. */
const kindsWithoutStrength = MarkFact.options.flatMap((option) => {
  const kind = option.shape.kind.value;
  return isOfStrength(kind) ? [] : [kind];
});

describe("marksOf", () => {
  it.each(kindsWithoutStrength)("notes %s where a scheme gives cause for it", (kind) => {
    const [scheme, verdict] = cases[kind];
    const facts = factsOf(assess(scheme), kind);
    expect(facts.length).toBeGreaterThan(0);
    for (const fact of facts) expect(fact.verdict).toBe(verdict);
  });

  it("notes none of the causes for a unit uncut on its pads, but that it works as built", () => {
    expect(assess(schemeOf(onGround)).marks.map(({ id }) => id)).toEqual(["borne-on-fittings:g1"]);
  });

  it("names a mark by its kind and what it concerns, not by what stands near", () => {
    const [scheme] = cases["tips-over"];
    const moved = schemeOf({ units: [g1, { ...f1, x: 3500 }, { ...f1, id: "t1", x: 3500, z: 2 * 2591 }], pads });
    const ids = (from: Scheme) => assess(from).marks.flatMap(({ id, fact }) => (fact.kind === "tips-over" ? [id] : []));
    expect(ids(scheme)).toEqual(["tips-over:f1"]);
    expect(ids(moved)).toEqual(["tips-over:f1"]);
    expect(factsOf(assess(moved), "tips-over")[0]?.elements).toEqual(["f1", "t1"]);
  });

  it("gives no mark but does not work, not checked or works as built: no strength is judged", () => {
    for (const [scheme] of Object.values(cases))
      for (const { verdict } of assess(scheme).marks)
        expect(["does not work", "not checked", "works as built"]).toContain(verdict);
  });

  it("tells the side an overhang points to by the compass: north turned 90°, what points to +x points south", () => {
    const drawn = { units: [g1, { ...f1, x: 1000 }], pads };
    expect(factsOf(assess(schemeOf(drawn)), "overhang")[0]?.towards).toBe("east");
    expect(factsOf(assess(schemeOf({ ...drawn, northMdeg: 90_000 })), "overhang")[0]?.towards).toBe("south");
  });

  it("says that a unit on one line of pads turns about it when balanced, and tips when not", () => {
    const line = [-2000, 2000].map((x) => ({ id: x < 0 ? "b1" : "b2", x, y: 0, width: 100 }));
    // Two pads under the middle of the two end sills bear no rail and no fitting: it falls.
    expect(
      factsOf(assess(schemeOf({ units: [{ ...g1, z: 10 }], pads: line })), "mechanism").map(
        ({ direction }) => direction,
      ),
    ).toEqual(["falls"]);
    // Pads under the left side only: its weight is 1129.5 mm to the right of them.
    const left = padsUnder(g1, 50).filter(({ y }) => y > 0);
    expect(factsOf(assess(schemeOf({ units: [{ ...g1, z: 50 }], pads: left })), "tips-over")[0]?.outsideMm).toBeCloseTo(
      1129.5,
      6,
    );
    // Two pads at opposite corners: its weight is on the line between them.
    const across = padsUnder(g1, 50).filter(({ x, y }) => x * y > 0);
    expect(
      factsOf(assess(schemeOf({ units: [{ ...g1, z: 50 }], pads: across })), "mechanism").map(
        ({ direction }) => direction,
      ),
    ).toEqual(["turns"]);
  });
});
