import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldNotes, mostNotes } from "../../src/drawing/leaders/fold-notes.ts";
import { orderNotes } from "../../src/drawing/leaders/order-notes.ts";
import { separateEnds } from "../../src/drawing/leaders/separate-ends.ts";
import { placeNumbers } from "../../src/drawing/leaders/place-numbers.ts";
import { routeLeaders } from "../../src/drawing/leaders/route-leaders.ts";
import type { ScreenPoint } from "../../src/drawing/view-transform.ts";

const marginPx = 1084;
const farthestBendPx = 264;
const anchor = fc.record({ xPx: fc.integer({ min: 160, max: 1020 }), yPx: fc.integer({ min: 30, max: 860 }) });
const anchors = fc.uniqueArray(anchor, { minLength: 2, maxLength: 12, selector: ({ xPx, yPx }) => `${xPx} ${yPx}` });
const heights = fc.uniqueArray(fc.integer({ min: 60, max: 840 }), { minLength: 12, maxLength: 12 });

const bare = { lettered: [], openings: [] };
const numbered = (points: readonly ScreenPoint[]) => points.map((point, index) => ({ ...point, number: index + 1 }));
const slotsAt = (yPx: readonly number[]) =>
  numbered(yPx.toSorted((a, b) => a - b).map((y) => ({ xPx: marginPx, yPx: y })));

/** Crossing told by sampling both lines densely, by another way than the router's own sign tests. */
function meet(one: readonly ScreenPoint[], other: readonly ScreenPoint[]): boolean {
  const heightsOf = (line: readonly ScreenPoint[], x: number) =>
    line.slice(1).flatMap((to, index) => {
      const from = line[index] ?? to;
      const [left, right] = from.xPx <= to.xPx ? [from, to] : [to, from];
      if (left.xPx === right.xPx || x < left.xPx || x > right.xPx) return [];
      return [left.yPx + ((right.yPx - left.yPx) * (x - left.xPx)) / (right.xPx - left.xPx)];
    });
  let before = 0;
  for (let x = 0; x <= marginPx; x += 0.5) {
    const [a, b] = [heightsOf(one, x)[0], heightsOf(other, x)[0]];
    if (a === undefined || b === undefined) before = 0;
    else {
      const sign = Math.sign(a - b);
      if (before !== 0 && sign !== before) return true;
      before = sign;
    }
  }
  return false;
}

describe("leaders", () => {
  it("never cross, whatever the places and the heights of the notes", () => {
    fc.assert(
      fc.property(anchors, heights, (places, ys) => {
        const lines = routeLeaders(numbered(places), slotsAt(ys)).flatMap(({ line }) => (line === null ? [] : [line]));
        for (const [i, one] of lines.entries())
          for (const other of lines.slice(i + 1)) expect(meet(one, other)).toBe(false);
      }),
      { seed: 6, numRuns: 120 },
    );
  });

  it("take a later bend where the first would run through a figure", () => {
    // Straight from (1058, 400) to (900, 200) the line is at y = 368 where x = 1033; bent at 990 it passes there at y = 400.
    const figure = { leftPx: 1026, topPx: 350, rightPx: 1040, footPx: 386 };
    const ends = [{ xPx: 900, yPx: 200, number: 1 }];
    const slots = [{ xPx: marginPx, yPx: 400, number: 1 }];
    expect(routeLeaders(ends, slots)[0]?.line?.[1]?.xPx).toBe(1058);
    expect(routeLeaders(ends, slots, [figure])[0]?.line?.[1]?.xPx).toBeLessThan(1040);
  });

  it("run through no word on the drawing: where every bend would, the number stands alone", () => {
    const word = { leftPx: 905, topPx: 150, rightPx: 925, footPx: 600 };
    const [leader] = routeLeaders(
      [{ xPx: 900, yPx: 300, number: 1 }],
      [{ xPx: marginPx, yPx: 400, number: 1 }],
      [word],
    );
    expect(leader).toEqual({ number: 1, line: null });
  });

  it("keep off the end of another where a bend does", () => {
    // Straight from (1058, 400) to (700, 200) the line is at y = 300 where x = 879: there the other one ends.
    const ends = [
      { xPx: 700, yPx: 200, number: 1 },
      { xPx: 879, yPx: 300, number: 2 },
    ];
    const lineOf = (given: typeof ends) =>
      routeLeaders(given, [
        { xPx: marginPx, yPx: 400, number: 1 },
        { xPx: marginPx, yPx: 700, number: 2 },
      ]).find(({ number }) => number === 1)?.line;
    expect(lineOf(ends.slice(0, 1))?.[1]?.xPx).toBe(1058);
    const [, bend] = lineOf(ends) ?? [];
    expect(bend?.xPx).toBeLessThan(1058);
  });

  it("are never so steep that they are read as a line of the drawing", () => {
    fc.assert(
      fc.property(anchors, heights, (places, ys) => {
        for (const { line } of routeLeaders(numbered(places), slotsAt(ys))) {
          const [, bend, end] = line ?? [];
          if (bend === undefined || end === undefined) continue;
          const [across, up] = [Math.abs(end.xPx - bend.xPx), Math.abs(end.yPx - bend.yPx)];
          expect(up).toBeLessThanOrEqual(2.2 * Math.max(across, 7) + 1e-9);
        }
      }),
      { seed: 9, numRuns: 60 },
    );
  });

  it("leave the margin level, bend once and end at the place", () => {
    fc.assert(
      fc.property(anchors, heights, (places, ys) => {
        const ends = numbered(places);
        const slots = slotsAt(ys);
        for (const { number, line } of routeLeaders(ends, slots)) {
          if (line === null) continue;
          const slot = slots.find((each) => each.number === number);
          expect(line).toHaveLength(3);
          expect(line[1]?.yPx).toBe(slot?.yPx);
          expect(line[2]).toMatchObject({ xPx: ends[number - 1]?.xPx, yPx: ends[number - 1]?.yPx });
        }
      }),
      { seed: 7, numRuns: 120 },
    );
  });

  it("are all drawn that are not too steep when the notes are ordered for them and evenly spaced, as a shortest matching cannot cross", () => {
    const apart = fc.uniqueArray(anchor, { minLength: 2, maxLength: 8, selector: ({ yPx }) => Math.round(yPx / 12) });
    fc.assert(
      fc.property(apart, (places) => {
        const span = { xPx: marginPx - 26, topPx: 90, footPx: 600 };
        const ordered = orderNotes(
          places.map((each) => ({ anchor: each })),
          span,
        );
        const step = (span.footPx - span.topPx) / (places.length - 1);
        const slots = slotsAt(places.map((_, index) => span.topPx + index * step));
        const routed = routeLeaders(numbered(ordered.map((note) => note.anchor ?? { xPx: 0, yPx: 0 })), slots);
        const flat = ({ number }: { number: number }) => {
          const [place, slot] = [ordered[number - 1]?.anchor, slots[number - 1]];
          if (place == null || slot === undefined) return false;
          return Math.abs(place.yPx - slot.yPx) <= 2.2 * (marginPx - farthestBendPx - place.xPx);
        };
        expect(routed.filter((leader) => leader.line === null && flat(leader))).toEqual([]);
      }),
      { seed: 8, numRuns: 150 },
    );
  });

  it("leave a note without a place out of the order and last", () => {
    const [a, b, c] = [{ anchor: { xPx: 300, yPx: 500 } }, { anchor: null }, { anchor: { xPx: 300, yPx: 100 } }];
    expect(orderNotes([a, b, c], { xPx: 1000, topPx: 100, footPx: 500 })).toEqual([c, a, b]);
  });
});

describe("folding of the margin", () => {
  const note = (verdict: "works as built" | "not checked" | "does not work", spokenOf = false) => ({
    verdict,
    comments: spokenOf ? ["said"] : [],
  });

  it("leaves eight notes alone", () => {
    const eight = Array.from({ length: mostNotes }, () => note("works as built"));
    expect(foldNotes(eight)).toEqual({ alone: eight, together: [] });
  });

  it("lays those that work as built together first, and keeps what does not work and what somebody wrote on", () => {
    const spoken = note("works as built", true);
    const bad = note("does not work");
    const { alone, together } = foldNotes([...Array.from({ length: 9 }, () => note("works as built")), spoken, bad]);
    expect(alone).toEqual([spoken, bad]);
    expect(together.map(({ verdict, notes }) => [verdict, notes.length])).toEqual([["works as built", 9]]);
  });

  it("lays those not checked together only when there are still too many", () => {
    const many = [
      note("works as built"),
      note("works as built"),
      ...Array.from({ length: 20 }, () => note("not checked")),
    ];
    expect(foldNotes(many).together.map(({ verdict, notes }) => [verdict, notes.length])).toEqual([
      ["works as built", 2],
      ["not checked", 20],
    ]);
  });
});

describe("numbers on the drawing", () => {
  const overlap = (a: ScreenPoint, b: ScreenPoint) => Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx) < 18;

  it("stand at their place where nothing is in the way", () => {
    expect(placeNumbers([{ xPx: 300, yPx: 200, number: 4 }], bare).get(4)).toEqual({ xPx: 300, yPx: 200 });
  });

  it("never stand over one another nor over a word beside, and stay within reach of their place", () => {
    const word = { leftPx: 290, topPx: 190, rightPx: 330, footPx: 204 };
    const ends = [1, 2, 3, 4].map((number) => ({ xPx: 300 + number, yPx: 200, number }));
    const spots = [...placeNumbers(ends, { ...bare, lettered: [word] }).values()];
    for (const [at, spot] of spots.entries()) {
      for (const other of spots.slice(at + 1)) expect(overlap(spot, other)).toBe(false);
      expect(
        spot.yPx + 9 <= word.topPx || spot.yPx - 9 >= word.footPx || spot.xPx + 9 <= 290 || spot.xPx - 9 >= 330,
      ).toBe(true);
      expect(Math.hypot(spot.xPx - 302, spot.yPx - 200)).toBeLessThan(50);
    }
  });
});

describe("numbers on a drawing with openings", () => {
  const opening = { leftPx: 292, topPx: 190, rightPx: 316, footPx: 214 };
  const end = { xPx: 304, yPx: 202, number: 1 };
  const spotOf = (openings: readonly (typeof opening)[]) =>
    placeNumbers([end], { lettered: [], openings }, 7.5).get(1) ?? { xPx: 0, yPx: 0 };

  it("stand beside a small opening, within reach of it, and on their place where none is", () => {
    expect(spotOf([])).toEqual({ xPx: 304, yPx: 202 });
    const { xPx, yPx } = spotOf([opening]);
    // its half and the number's: 12 + 7.5 px and a hair of air
    expect(Math.max(Math.abs(xPx - 304), Math.abs(yPx - 202))).toBeGreaterThanOrEqual(19.5);
    expect(Math.hypot(xPx - 304, yPx - 202)).toBeLessThan(40);
  });

  it("stay in the middle of one too large to leave", () => {
    expect(spotOf([{ leftPx: 200, topPx: 100, rightPx: 400, footPx: 300 }])).toEqual({ xPx: 304, yPx: 202 });
  });
});

describe("ends of leaders", () => {
  it("keep between sky and ground where they are held to it, the next standing aside at the nearest free place", () => {
    const end = { xPx: 200, yPx: 300 };
    // 300 and 321 are within; 342 would be below the ground, so the third stands 21 px beside the first.
    const [first, second, third] = separateEnds([end, end, end], { topPx: 295, footPx: 330 });
    expect([first, second]).toEqual([end, { xPx: 200, yPx: 321 }]);
    expect(third?.yPx).toBe(300);
    expect(Math.abs((third?.xPx ?? 0) - 200)).toBe(21);
  });

  it("on one small view keep to it, however many fall together, none over another", () => {
    const ends = separateEnds(
      Array.from({ length: 12 }, () => ({ xPx: 200, yPx: 300 })),
      { topPx: 240, footPx: 330 },
    );
    for (const [at, end] of ends.entries()) {
      expect(end !== null && end.yPx >= 240 && end.yPx <= 330).toBe(true);
      for (const other of ends.slice(at + 1))
        expect(
          Math.hypot((other?.xPx ?? 0) - (end?.xPx ?? 0), (other?.yPx ?? 0) - (end?.yPx ?? 0)),
        ).toBeGreaterThanOrEqual(21);
    }
  });

  it("near the foot of what they are on are moved upwards", () => {
    const foot = { xPx: 500, yPx: 300, upwards: true };
    expect(separateEnds([foot, foot]).map((end) => end?.yPx)).toEqual([300, 279]);
  });

  it("that fall together are moved down one under the other, 21 px apart, the first staying where it is", () => {
    const at = (xPx: number, yPx: number) => ({ xPx, yPx });
    expect(separateEnds([at(500, 300), null, at(500, 300), at(504, 302), at(900, 300)])).toEqual([
      at(500, 300),
      null,
      at(500, 321),
      at(504, 344),
      at(900, 300),
    ]);
  });
});
