import { assess, seatPlaces } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// A 20 ft unit (2591 high) pushed 1000 mm east on another. Its front fittings come down at 1000 − 2926.5 = −1926.5 on the top
// rails, 60 wide, middle at 1219 − 30 = 1189, 6 mm below; the last fittings below, at 2926.5, come under its bottom rails, 48
// wide, middle at 1219 − 24 = 1195, 12.5 mm below (ISO 1496-1, from memory; sizes of the generic specification).
const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const f1 = { ...g1, id: "f1", x: 1000, z: 2591 } as const;
const drawn = { units: [g1, f1], pads: padsUnder(g1) };
const tail = { id: "s1", upper: "f1", lower: "g1", x: -1926.5, y: 1189, packing: 6 };
const front = { id: "s2", upper: "f1", lower: "g1", x: 2926.5, y: 1195, packing: 12.5, width: 48 };
const marked = (seats: Parameters<typeof schemeOf>[0]["seats"], more: Partial<Parameters<typeof schemeOf>[0]> = {}) =>
  assess(schemeOf({ ...drawn, ...more, ...(seats === undefined ? {} : { seats }) }));

describe("a seat", () => {
  it("lies on the rail or fitting under it, at the top of that, its packing filling the gap", () => {
    const [onRail, onFitting] = seatPlaces(schemeOf({ ...drawn, seats: [tail, front] }));
    expect(onRail?.lower).toMatchObject({ target: { on: "rail", rail: "left" }, topZMm: 2585, offMm: 0, halfMm: 30 });
    expect(onRail?.upper).toMatchObject({ fitting: "front-left", undersideZMm: 2591 });
    expect(onFitting?.lower).toMatchObject({ target: { on: "fitting", fitting: "door-left" }, topZMm: 2591 });
    expect(onFitting?.upper).toMatchObject({ side: "left", undersideZMm: 2603.5 });
    expect(factsOf(marked([tail, front]), "seat-packing")).toEqual([]);
  });

  it("is named at the bearing it packs and at the crossing that lies on a rail", () => {
    const assessment = marked([tail, front]);
    expect(bearingOf(assessment, "f1:front-left")).toMatchObject({ seatId: "s1", gapMm: 0, joint: "seat" });
    expect(bearingOf(assessment, "f1:left-rail:g1")).toMatchObject({ seatId: "s2", gapMm: 0, on: "fitting" });
    expect(bearingOf(assessment, "f1:front-right")?.seatId).toBeUndefined();
    const [onRail] = factsOf(assessment, "borne-on-rail");
    expect(onRail?.crossings.map(({ seatId, gapMm }) => [seatId, gapMm])).toEqual([
      [undefined, 6],
      ["s1", 0],
    ]);
  });

  it("changes no force by statics: each bearing takes what it took without it", () => {
    const forces = (assessment: ReturnType<typeof assess>) => assessment.bearings.map(({ forceKn }) => forceKn);
    expect(forces(marked([tail, front]))).toEqual(forces(marked([])));
  });

  it("too thin leaves the unit clear by the rest, too thick makes it rock by the excess", () => {
    expect(factsOf(marked([{ ...front, packing: 6 }]), "seat-packing")).toMatchObject([
      { gapMm: 12.5, packingMm: 6, leftMm: 6.5, elements: ["s2", "f1", "g1"] },
    ]);
    expect(factsOf(marked([{ ...tail, packing: 10 }]), "seat-packing")).toMatchObject([{ gapMm: 6, leftMm: -4 }]);
    // Within 2 mm it is closed on site.
    expect(factsOf(marked([{ ...tail, packing: 8 }]), "seat-packing")).toEqual([]);
  });

  it("counts its own level error: 5 mm high fills 5 mm more", () => {
    expect(factsOf(marked([{ ...tail, error: 5 }]), "seat-packing")).toMatchObject([{ packingMm: 11, leftMm: -5 }]);
  });

  it("reaches past its rail by what the plate and its place leave: 15 off the middle with 60 wide gives 15 + 30 − 30", () => {
    expect(factsOf(marked([{ ...tail, y: 1174 }]), "seat-off-rail")).toMatchObject([{ offMm: 15, pastMm: 15 }]);
    expect(factsOf(marked([{ ...tail, y: 1189, width: 100 }]), "seat-off-rail")).toMatchObject([
      { offMm: 0, pastMm: 20 },
    ]);
  });

  it("bears nothing in the middle of a roof, beside the unit over it, or on a rail that is cut", () => {
    const lacks = (assessment: ReturnType<typeof assess>) =>
      factsOf(assessment, "seat-without-bearing").map((fact) => [fact.lacks, fact.verdict]);
    expect(lacks(marked([{ ...tail, y: 0 }]))).toEqual([["both", "does not work"]]);
    expect(lacks(marked([{ ...tail, x: -2600 }]))).toEqual([["a member over it", "does not work"]]);
    const cuts = [{ id: "d1", in: "g1", face: "left", at: 1000, sill: 900, width: 800, height: 1691 } as const];
    // The opening takes the rail from 1000 to 1800 mm from the front end; the seat is at 3029 − 1926.5 = 1102.5.
    expect(lacks(marked([tail], { cuts }))).toEqual([["a whole rail under it", "does not work"]]);
    expect(bearingOf(marked([tail], { cuts }), "f1:front-left")?.on).toBe("sheet");
  });

  it("takes the place of the crossing that would else be taken to be packed towards that end", () => {
    // Turned across three units side by side and 900 mm past the last: each rail of it crosses five rails below.
    const row = [0, 1, 2].map((at) => ({ id: `g${at}`, type: "1CC" as const, x: 0, y: at * 2438 }));
    const turned = { id: "t", type: "1CC" as const, x: 0, y: 2438 + 900, z: 2591, turn: 90 };
    const base = {
      units: [...row, turned],
      pads: row.flatMap((unit) => padsUnder(unit)).map((pad) => ({ ...pad, width: 170 })),
    };
    const places = (assessment: ReturnType<typeof assess>) =>
      assessment.bearings.filter(({ unitId, on }) => unitId === "t" && on === "rail").map(({ at }) => at.yMm);
    const free = places(assess(schemeOf(base)));
    // The outermost rail, the left one of g2, has its middle at 2 × 2438 + 1189 = 6065.
    expect(Math.max(...free)).toBeCloseTo(6065, 6);
    // Its two rails run along y at ±1195. Seats on the inner rail of g2 instead, middle at 2 × 2438 − 1189 = 3687.
    const seats = [-1195, 1195].map((x, at) => ({
      id: `s${at}`,
      upper: "t",
      lower: "g2",
      x,
      y: 3687,
      packing: 18.5,
    }));
    expect(Math.max(...places(assess(schemeOf({ ...base, seats }))))).toBeCloseTo(3687, 6);
  });

  it("lies on a beam as well, and bears nothing on one that leads nowhere", () => {
    const beam = { id: "m1", from: [0, -2000, 3000], to: [0, 2000, 3000] } as const;
    const unit = { ...g1, id: "u", z: 3000 } as const;
    const ends = [-2926.5, 2926.5].flatMap((x) =>
      [-1129.5, 1129.5].map((y) => ({ id: `p${x > 0 ? "e" : "w"}${y > 0 ? "n" : "s"}`, x, y, foot: 0, head: 3000 })),
    );
    const pads = ends.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));
    const seat = { id: "s1", upper: "u", lower: "m1", x: 0, y: 1195, packing: 12.5, width: 48 };
    const scheme = { units: [unit], posts: ends, pads, beams: [beam], seats: [seat] };
    expect(factsOf(assess(schemeOf(scheme)), "seat-without-bearing").map((fact) => fact.lacks)).toEqual([
      "a member under it",
    ]);
    // W8x31 is 203.2 mm deep.
    const held = {
      ...scheme,
      pads: [...pads, ...[-1800, 1800].map((y, at) => ({ id: `b${at}`, x: 0, y, top: 2796.8 }))],
    };
    const assessment = assess(schemeOf(held));
    expect(bearingOf(assessment, "u:left-rail:m1")).toMatchObject({ on: "beam", seatId: "s1", gapMm: 0 });
  });
});
