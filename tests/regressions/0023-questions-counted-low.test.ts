import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const g = { id: "g", type: "1CC" as const, x: 0, y: 0 };
const asked = (
  parts: Omit<Parameters<typeof schemeOf>[0], "units"> & { units?: Parameters<typeof schemeOf>[0]["units"] },
) => assess(schemeOf({ units: [g], ...parts })).questions;

// Of a container: in another's place 1, tips full and empty 2, nearly so 2, falls, turns, slides 3, overhangs either end 2,
// either rail on rails 2, rocks 1, below ground 1, borne on corners 1, settled below 1: 16. Of each of its four corners:
// on rail, on air, joined how, clear, off its pad, no pad: 6 × 4 = 24. And whether all loads arrive: 16 + 24 + 1 = 41.
it("of one container 41 questions are asked", () => {
  expect(asked({})).toBe(41);
});

// Of a 45 ft container, on eight fittings, 16 + 6 × 8 + 1 = 65.
it("of one with eight bottom fittings 65", () => {
  expect(asked({ units: [{ ...g, type: "1EE" }] })).toBe(65);
});

// Of a pad: in a container, in another pad, does it hold anything, does it reach the ground.
it("each pad adds four", () => {
  expect(asked({ pads: padsUnder(g) })).toBe(41 + 4 * 4);
});

// Of a post: in a pad 1, its way down 1, does it hold anything 1, what it takes 1, head and foot off centre 2, in an
// opening 1, through a container 1, is its section known 1.
it("each post adds nine", () => {
  expect(asked({ posts: [{ id: "p", x: 9000, y: 0, foot: 0, head: 2591 }] })).toBe(41 + 9);
});

// Of a beam: in a post, in a pad, in another beam 3, what stands on it 1, what it carries 1, does it hold anything 1, either
// end held 2, does it lift 1, through a container 1, is its section known 1.
it("each beam adds eleven", () => {
  expect(asked({ beams: [{ id: "m", from: [9000, 0, 500], to: [12000, 0, 500] }] })).toBe(41 + 11);
});

// Of a seat: what it lies on, what is over it, does its packing fill the gap, is it on its member. Of a tie: what it bridges,
// why not. Of a lock: does it serve. Of a free load: is it on its unit.
it("a seat adds four, a tie two, a lock one, a free load one", () => {
  const units = [g, { ...g, id: "h", y: 2488 }];
  const two = asked({ units });
  expect(asked({ units, seats: [{ id: "s", upper: "g", lower: "h", x: 0, y: 0, packing: 6 }] })).toBe(two + 4);
  expect(asked({ units, ties: [{ id: "t", a: "g", b: "h", at: [0, 1244, 2500] }] })).toBe(two + 2);
  expect(asked({ units, locks: [{ id: "l", in: "g", fitting: "front-left", kind: "lock" }] })).toBe(two + 1);
  expect(asked({ units, put: [{ id: "q", in: "g", x: 100, y: 100, downN: 1 }] })).toBe(two + 1);
});

// Of any opening: on its face 1, clear of four members 4, clear of others 1: 6. In a wall: half, piers, wall out, load over it
// 4. In a door end: what it cuts, load over it 2. In a roof: those two and what it meets 3. In a floor: cross members and
// what it meets 2.
it("an opening adds ten in a wall, eight in a door end, nine in a roof, eight in a floor", () => {
  const added = (face: "left" | "front" | "door" | "roof" | "floor") =>
    asked({ cuts: [{ id: "o", in: "g", face, at: 800, sill: 800, width: 600, height: 600 }] }) - 41;
  expect((["left", "front", "door", "roof", "floor"] as const).map(added)).toEqual([10, 10, 8, 9, 8]);
});
