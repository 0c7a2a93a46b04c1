import { describe, expect, it } from "vitest";
import type { Mark, Scheme } from "@cornerway/schema";
import { assess } from "../../src/assess.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { Generator, Trial } from "../../src/remedies/trial.ts";
import { settleFirst } from "../../src/remedies/settle-first.ts";
import { heavierFrames } from "../../src/remedies/ways/heavier-frames.ts";
import { otherUnit } from "../../src/remedies/ways/other-unit.ts";
import { packing } from "../../src/remedies/ways/packing.ts";
import { postsAtOpening } from "../../src/remedies/ways/posts-at-opening.ts";
import { splitOpening } from "../../src/remedies/ways/split-opening.ts";
import { swapUnits } from "../../src/remedies/ways/swap-units.ts";
import { ties } from "../../src/remedies/ways/ties.ts";
import { unframedOpening } from "../../src/remedies/ways/unframed-opening.ts";
import { closedOpenings, framedWall, weldedDoors } from "../../src/remedies/ways/wall-that-counts.ts";
import { openingUnderLoad, whatComesDown } from "../../src/remedies/ways/what-comes-down.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { drawn } from "./listed.ts";

const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const beside = { id: "h", type: "1CCC" as const, x: 0, y: 2488 };
const [anyMark] = assess(schemeOf({ units: [lower], pads: padsUnder(lower) })).marks;

/** A way asked for a mark on these elements. */
function waysOf(way: Generator, scheme: Scheme, elements: string[], fact?: Mark["fact"]): readonly Trial[] {
  if (anyMark === undefined) throw new Error("a unit on pads has a mark");
  return way({ scheme, analysis: analyse(scheme), mark: { ...anyMark, elements, ...(fact && { fact }) } }).flat();
}

describe("ties", () => {
  const two = schemeOf({ units: [lower, beside], pads: [...padsUnder(lower), ...padsUnder(beside)] });

  it("join a unit to the one beside it at two top fittings, then at the bottom as well, in the middle of the gap of 50 mm", () => {
    const [top, both] = waysOf(ties, two, ["g"]);
    expect(top?.change).toEqual({ kind: "ties", unitIds: ["g", "h"], places: 2 });
    expect(both?.change).toEqual({ kind: "ties", unitIds: ["g", "h"], places: 4 });
    // half of 2438 mm, and half of the gap
    for (const operation of both?.operations ?? [])
      expect(operation).toMatchObject({ kind: "tie.set", tie: { yUm: (1219 + 25) * 1000 } });
  });

  it("serve where they are drawn", () => {
    const [, both] = waysOf(ties, two, ["g"]);
    const { marks } = assess(drawn(two, both?.operations ?? []));
    expect(marks.filter(({ fact }) => fact.kind === "tie-joins")).toHaveLength(4);
    expect(marks.filter(({ fact }) => fact.kind === "tie-cannot-serve")).toEqual([]);
  });

  it("are none where nothing stands beside", () => {
    expect(waysOf(ties, schemeOf({ units: [lower], pads: padsUnder(lower) }), ["g"])).toEqual([]);
  });
});

describe("heavier frames", () => {
  const door = { id: "d", in: "g", face: "right" as const, use: "door" as const, at: 1500, sill: 180, width: 1000 };
  const scheme = schemeOf({ units: [lower], pads: padsUnder(lower), cuts: [{ ...door, height: 2200 }] });
  const over = (place: string): Mark["fact"] => ({
    kind: "overstressed",
    more: 0,
    parts: [{ partId: `g jamb ${place}`, part: "jamb", place, check: "weld", utilisation: 1.4, run: "1.4D" }],
  });

  it("are drawn for the framed openings of the wall whose bars are beyond their strength, ever heavier", () => {
    const found = waysOf(heavierFrames, scheme, ["g"], over("right at 2.40 m, ends of the stated weld"));
    expect(
      found.map(({ change }) => (change.kind === "frame opening" ? [change.openingIds, change.header] : [])),
    ).toEqual([
      [["d"], "HSS6x4x3/8"],
      [["d"], "HSS8x4x3/8"],
    ]);
  });

  it("are none where the bars of another wall are", () => {
    expect(waysOf(heavierFrames, scheme, ["g"], over("left at 2.40 m"))).toEqual([]);
  });
});

describe("another unit", () => {
  // 40 ft 12,192 mm, 30 ft 9,125 mm, 20 ft 6,058 mm (ISO 668, from memory): the end that bears stays, so that the middle moves by
  // half of what the unit is shorter: (12,192 − 9,125)/2 = 1,533.5 and (12,192 − 6,058)/2 = 3,067 mm.
  it("is a shorter one of the same height whose bearing end stays", () => {
    const scheme = schemeOf({
      units: [lower, { id: "t", type: "1AAA", x: 4000, y: 0, z: 2896 }],
      pads: padsUnder(lower),
    });
    const found = waysOf(otherUnit, scheme, ["t"]);
    const after = found.flatMap(({ operations }) =>
      operations.flatMap((one) => (one.kind === "container.change" ? [[one.container.type, one.container.xUm]] : [])),
    );
    expect(after).toEqual([
      ["1BBB", (4000 - 1533.5) * 1000],
      ["1CCC", (4000 - 3067) * 1000],
    ]);
  });
});

describe("packing", () => {
  // `t` lies 20 mm above `g`: the seat drawn fills 10 mm of what is between its fitting and the rail
  const scheme: Scheme = {
    ...schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: 2896 + 20 }], pads: padsUnder(lower) }),
    seats: [
      {
        ...{ id: "s", tag: "S1", upperId: "t", lowerId: "g", heldDown: false },
        ...{ xUm: (1500 - 2926.5) * 1000, yUm: -1_189_000, lengthUm: 200_000, widthUm: 60_000, packingUm: 10_000 },
      },
    ],
  };

  it("fills what a seat leaves open", () => {
    const found = waysOf(packing, scheme, ["t"]);
    const gap = analyse(scheme)
      .bearings.find(({ unitId }) => unitId === "t")
      ?.contacts.find(({ seatId }) => seatId === "s")?.gapMm;
    expect(gap).toBeGreaterThan(0);
    expect(found.map(({ change }) => change)).toEqual([{ kind: "packing", seatId: "s", toMm: 10 + (gap ?? NaN) }]);
    const after = analyse(drawn(scheme, found[0]?.operations ?? []));
    const filled = after.bearings.find(({ unitId }) => unitId === "t")?.contacts.find(({ seatId }) => seatId === "s");
    expect(filled?.gapMm).toBeCloseTo(0, 6);
  });

  it("is none where the seat fills its gap", () => {
    const [way] = waysOf(packing, scheme, ["t"]);
    expect(waysOf(packing, drawn(scheme, way?.operations ?? []), ["t"])).toEqual([]);
  });
});

describe("an opening split", () => {
  const door = { id: "d", in: "g", face: "right" as const, use: "door" as const, at: 1500, sill: 180, width: 2400 };
  const scheme = schemeOf({ units: [lower], pads: padsUnder(lower), cuts: [{ ...door, height: 2200 }] });

  // about its middle at 1500 + 1200 = 2700: halves of 1200 beside a pier of 700 begin at 2700 − 350 − 1200 = 1150 and 3050
  it("is two, half as wide each, apart by ever more wall about its middle, with no clear width lost", () => {
    const found = waysOf(splitOpening, scheme, ["d", "g"]);
    expect(found.map(({ change }) => (change.kind === "split opening" ? change.pierMm : undefined))).toEqual([
      700, 1220, 1800, 2400,
    ]);
    const [first] = found.map(({ operations }) => drawn(scheme, operations).openings);
    expect(first?.map(({ offsetUm, widthUm }) => [offsetUm / 1000, widthUm / 1000])).toEqual([
      [1150, 1200],
      [3050, 1200],
    ]);
    for (const { operations } of found)
      expect(drawn(scheme, operations).openings.reduce((sum, { widthUm }) => sum + widthUm, 0)).toBe(2_400_000);
  });

  it("is none where its halves are too narrow to pass, or the wall is out", () => {
    const cut = (one: { use?: "open-wall"; at?: number; width: number }) =>
      schemeOf({ units: [lower], pads: padsUnder(lower), cuts: [{ ...door, height: 2200, ...one }] });
    expect(waysOf(splitOpening, cut({ width: 1700 }), ["d", "g"])).toEqual([]);
    expect(waysOf(splitOpening, cut({ use: "open-wall", at: 300, width: 5400 }), ["d", "g"])).toEqual([]);
  });
});

describe("units that change places", () => {
  // a 40 ft unit lies across a 20 ft one that has nothing under its door end; beside it a 20 ft one stands on a 40 ft one
  const long = { id: "a", type: "1AAA" as const, x: 0, y: 4000 };
  const scheme = schemeOf({
    units: [
      lower,
      { id: "t", type: "1AAA", x: 3067, y: 0, z: 2896 },
      long,
      { id: "u", type: "1CCC", x: 0, y: 4000, z: 2896 },
    ],
    pads: [...padsUnder(lower), ...padsUnder(long)],
  });

  it("come down on fittings at all corners where they bore on rails before", () => {
    const [way, ...others] = waysOf(swapUnits, scheme, ["t"]);
    expect(others).toEqual([]);
    expect(way?.change).toEqual({ kind: "swap units", unitId: "t", withId: "u" });
    const after = drawn(scheme, way?.operations ?? []);
    const places = after.containers.flatMap(({ id, xUm, yUm }) => (id === "t" || id === "u" ? [[id, xUm, yUm]] : []));
    // the 20 ft unit takes the front end of the long one's place: 3067 − (12,192 − 6058)/2 = 0
    expect(places).toEqual([
      ["t", 0, 4_000_000],
      ["u", 0, 0],
    ]);
    const { marks } = assess(after);
    expect(marks.filter(({ fact }) => fact.kind === "borne-on-rail" || fact.kind === "tips-over")).toEqual([]);
  });

  it("are none among units of one length", () => {
    expect(waysOf(swapUnits, schemeOf({ units: [lower, beside], pads: padsUnder(lower) }), ["g"])).toEqual([]);
  });
});

describe("parts beyond their strength under what comes down off its corners", () => {
  // `t` lies 1.5 m east of `g`, whose rail it presses
  const scheme = schemeOf({
    units: [lower, { id: "t", type: "1CCC", x: 1500, y: 0, z: 2896 }],
    pads: padsUnder(lower),
    cuts: [{ id: "d", in: "g", face: "right", use: "door", at: 1500, sill: 180, width: 1600, height: 2200 }],
  });
  const over = (place: string): Mark["fact"] => ({
    kind: "overstressed",
    more: 0,
    parts: [{ partId: `g ${place}`, part: "top side rail", place, check: "weld", utilisation: 1.4, run: "1.4D" }],
  });

  it("lead to that unit moved back by its 1.50 m onto the corners", () => {
    const [first] = waysOf(whatComesDown, scheme, ["g"], over("top side rail right"));
    expect(first?.change).toMatchObject({ kind: "land on fittings", unitId: "t", byMm: 1500, landings: 4 });
  });

  it("lead to the same from the unit that lies there", () => {
    const [first] = waysOf(whatComesDown, scheme, ["t"], over("top side rail right"));
    expect(first?.change).toMatchObject({ kind: "land on fittings", unitId: "t", byMm: 1500 });
  });

  it("are none where all stand on their corners", () => {
    const plain = schemeOf({ units: [lower, { id: "t", type: "1CCC", x: 0, y: 0, z: 2896 }], pads: padsUnder(lower) });
    expect(waysOf(whatComesDown, plain, ["g"], over("top side rail right"))).toEqual([]);
  });

  // the door begins at 1.50 m from the end; places count from the middle of the corner post, (6058 − 5853)/2 = 102.5 mm in
  it("lead to the opening whose stretch of wall is named, narrowed; to none of another wall", () => {
    const narrowed = (place: string) =>
      waysOf(openingUnderLoad, scheme, ["g"], over(place)).flatMap(({ change }) =>
        change.kind === "narrow opening" ? [change.openingId] : [],
      );
    expect(new Set(narrowed("bottom side rail right over 1.40–3.00 m"))).toEqual(new Set(["d"]));
    expect(narrowed("bottom side rail left over 1.40–3.00 m")).toEqual([]);
  });
});

describe("what is to be settled first", () => {
  // `t` reaches 3.6 m past the middle of `g` and goes over; `h` stands beside
  const scheme = schemeOf({
    units: [lower, beside, { id: "t", type: "1CCC", x: 3600, y: 0, z: 2896 }],
    pads: [...padsUnder(lower), ...padsUnder(beside)],
  });
  const { marks } = assess(scheme);
  const firstOf = (elements: string[]) => {
    if (anyMark === undefined) throw new Error("a unit on pads has a mark");
    return settleFirst(analyse(scheme), { ...anyMark, elements }, marks);
  };

  it("is the unit that falls, for what it comes down on", () => {
    expect(marks.find(({ id }) => id === "tips-over:t")?.verdict).toBe("does not work");
    expect(firstOf(["g"])).toEqual(["t"]);
  });

  it("is the unit itself for what strength notes of it", () => {
    if (anyMark === undefined) throw new Error("a unit on pads has a mark");
    const uplift: Mark["fact"] = { kind: "uplift", places: [], forceKn: 10, run: "0.9D + W" };
    expect(settleFirst(analyse(scheme), { ...anyMark, elements: ["t"], fact: uplift }, marks)).toEqual(["t"]);
    expect(settleFirst(analyse(scheme), { ...anyMark, elements: ["h"], fact: uplift }, marks)).toEqual([]);
  });

  it("is nothing for its other marks, nor for what it does not touch", () => {
    expect(firstOf(["t"])).toEqual([]);
    expect(firstOf(["d", "g", "t"])).toEqual([]);
    expect(firstOf(["h"])).toEqual([]);
  });
});

describe("an opening left without its frame", () => {
  const door = { id: "d", in: "g", face: "right" as const, use: "window" as const, at: 2000, sill: 900, width: 1500 };
  const scheme = schemeOf({ units: [lower], pads: padsUnder(lower), cuts: [{ ...door, height: 1000 }] });

  // 80, 65 and 50 % of 1500 mm to whole 50 mm: 1200, 950 and 750; about its middle at 2000 + 750
  it("is as wide as it is, then ever narrower about its middle", () => {
    const found = waysOf(unframedOpening, scheme, ["d", "g"]);
    const widths = found.flatMap(({ change }) => (change.kind === "leave unframed" ? [change.widthMm] : []));
    expect(widths).toEqual([1500, 1200, 950, 750]);
    for (const { operations } of found) {
      const [opening] = drawn(scheme, operations).openings;
      expect(opening?.framed).toBe(false);
      expect((opening?.offsetUm ?? NaN) + (opening?.widthUm ?? NaN) / 2).toBe(2_750_000);
    }
  });

  it("is none where it has none, or the whole wall is out", () => {
    const bare = drawn(scheme, waysOf(unframedOpening, scheme, ["d", "g"])[0]?.operations ?? []);
    expect(waysOf(unframedOpening, bare, ["d", "g"])).toEqual([]);
    const out = schemeOf({
      units: [lower],
      pads: padsUnder(lower),
      cuts: [{ ...door, use: "open-wall", at: 300, sill: 180, width: 5400, height: 2400 }],
    });
    expect(waysOf(unframedOpening, out, ["d", "g"])).toEqual([]);
  });
});

describe("a wall that would count", () => {
  const end = { in: "g", face: "front" as const, use: "window" as const, sill: 900, height: 1000 };
  const scheme = schemeOf({
    units: [lower],
    pads: padsUnder(lower),
    cuts: [
      { ...end, id: "a", at: 400, width: 300 },
      { ...end, id: "b", at: 1000, width: 600 },
    ],
  });
  const bare: Scheme = { ...scheme, openings: scheme.openings.map((opening) => ({ ...opening, framed: false })) };
  const fact = (face: "front" | "door", ...fails: string[]): Mark["fact"] => ({
    ...{ kind: "no-lateral-wall", way: "crosswise" },
    walls: [{ face, fails }],
  });
  const misses = "openings framed in steel not less than was removed";

  it("has its bare openings framed, all of them, where nothing else is missing", () => {
    const [way, ...others] = waysOf(framedWall, bare, ["g"], fact("front", misses));
    expect(others).toEqual([]);
    expect(way?.change).toMatchObject({ kind: "frame opening", openingIds: ["a", "b"] });
    expect(drawn(bare, way?.operations ?? []).openings.map(({ framed }) => framed)).toEqual([true, true]);
    expect(waysOf(framedWall, bare, ["g"], fact("front", misses, "counted pieces at least 4 ft"))).toEqual([]);
    expect(waysOf(framedWall, scheme, ["g"], fact("front", misses))).toEqual([]);
  });

  it("has its openings closed, the widest first", () => {
    const found = waysOf(closedOpenings, bare, ["g"], fact("front", misses));
    const left = found.map(({ operations }) => drawn(bare, operations).openings.map(({ id }) => id));
    expect(left).toEqual([["a"], []]);
  });

  it("is the door end with its doors welded shut, unless it is cut or they are", () => {
    const doors = fact("door", "end doors welded shut");
    const [way] = waysOf(weldedDoors, bare, ["g"], doors);
    expect(way?.change).toEqual({ kind: "weld doors", unitId: "g" });
    const welded = drawn(bare, way?.operations ?? []);
    expect(welded.containers.map((unit) => unit.doors)).toEqual(["welded shut"]);
    expect(waysOf(weldedDoors, welded, ["g"], doors)).toEqual([]);
    expect(waysOf(closedOpenings, bare, ["g"], doors)).toEqual([]);
    const cut = { ...bare, openings: bare.openings.map((opening) => ({ ...opening, face: "door" as const })) };
    expect(waysOf(weldedDoors, cut, ["g"], doors)).toEqual([]);
  });
});

describe("two posts in the middle of a wall that is out", () => {
  const out = { id: "d", in: "g", face: "right" as const, use: "open-wall" as const, at: 300, sill: 180, width: 5400 };
  const scheme = schemeOf({ units: [lower], pads: padsUnder(lower), cuts: [{ ...out, height: 2400 }] });
  const found = waysOf(postsAtOpening, scheme, ["d", "g"]).filter(({ also = [] }) =>
    also.some(({ kind }) => kind === "narrow opening"),
  );

  // 5400 mm less 100, 150 and 200 at either side; about its middle at 300 + 2700
  it("leave a little more wall at either side, ever more, and say so", () => {
    const widths = found.flatMap(({ also = [] }) => also.map((one) => "toMm" in one && one.toMm));
    expect(widths).toEqual([5200, 5100, 5000]);
    for (const [n, { operations }] of found.entries()) {
      const [opening] = drawn(scheme, operations).openings;
      expect(opening?.use).toBe("passage");
      expect(opening?.widthUm).toBe(1000 * Number(widths[n]));
      expect((opening?.offsetUm ?? NaN) + (opening?.widthUm ?? NaN) / 2).toBe(3_000_000);
    }
  });

  // the unit's middle is at 3029 of its 6058 mm: 3000 − 450 − 3029 = −479, and 900 further 421
  it("stand on pads of 900 mm that touch", () => {
    const posts = found.map(({ operations }) => drawn(scheme, operations).posts.map(({ xUm }) => xUm));
    expect(posts).toEqual(Array.from({ length: 3 }, () => [-479_000, 421_000]));
    const [first] = found;
    const known = new Set(scheme.pads.map(({ id }) => id));
    const pads = drawn(scheme, first?.operations ?? []).pads.filter(({ id }) => !known.has(id));
    expect(pads.map(({ lengthUm }) => lengthUm)).toEqual([900_000, 900_000]);
    expect(
      assess(drawn(scheme, first?.operations ?? [])).marks.filter(({ fact }) => fact.kind === "collision"),
    ).toEqual([]);
  });

  it("are none over a door that one post would part", () => {
    const door = schemeOf({
      units: [lower],
      pads: padsUnder(lower),
      cuts: [{ ...out, use: "door", width: 2000, height: 2200 }],
    });
    expect(waysOf(postsAtOpening, door, ["d", "g"]).flatMap(({ also = [] }) => also)).toEqual([]);
  });
});
