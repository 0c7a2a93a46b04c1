import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 20 ft unit pushed x along another: the last thing under it are the fittings at 2926.5 mm (half of S, ISO 668, from
// memory), its middle is at x. It stands 2926.5 − x inside them.
const g = { id: "g", type: "1CC" as const, x: 0, y: 0 };
const pushed = (x: number) => schemeOf({ units: [g, { ...g, id: "u", x, z: 2591 }], pads: padsUnder(g) });
const near = (x: number) => factsOf(assess(pushed(x)), "near-tipping");

it("a unit 126.5 mm from tipping is told its margin, not checked: where its weight lies is not known so well", () => {
  expect(near(2800)).toMatchObject([
    { id: "near-tipping:u", insideMm: 126.5, towards: "east", verdict: "not checked", elements: ["u"] },
  ]);
});

it("the margin is 0.3 m: at 299.5 it is told, at 300.5 it is not", () => {
  expect(near(2627)).toMatchObject([{ insideMm: 299.5 }]);
  expect(near(2626)).toEqual([]);
});

it("a unit past the edge tips, and is not told to be near it as well", () => {
  expect(near(3000)).toEqual([]);
  expect(factsOf(assess(pushed(3000)), "tips-over")).toHaveLength(1);
});

it("the architect reads the margin and the side", () => {
  const scheme = pushed(2800);
  const mark = assess(scheme).marks.find(({ fact }) => fact.kind === "near-tipping");
  expect(mark === undefined ? "" : markSentences(mark, elementNames(scheme), "architect").body).toMatch(
    /^U2 stands only 0\.13 m from tipping over to the east\./,
  );
});

// u is pushed 2800 mm; v, as heavy, stands on it 300 mm further back, all of it on u. Empty, the two come down at
// (2800 + 2500)/2 = 2650, which is 276.5 mm inside. With 10 kN/m² on v's floor they come down nearer 2500, past the margin
// of 0.3 m: 10 × 6.058 × 2.438 = 147.7 kN there against 22 kN of tare.
it("where imposed loads hold it back, the margin told is the one without them", () => {
  const scheme = schemeOf({
    units: [g, { ...g, id: "u", x: 2800, z: 2591 }, { ...g, id: "v", x: 2500, z: 2 * 2591 }],
    pads: padsUnder(g),
    loads: [{ in: "v", pa: 10_000 }],
  });
  expect(factsOf(assess(scheme), "near-tipping")).toMatchObject([
    { id: "near-tipping:u", insideMm: 276.5, whenEmpty: true, elements: ["u", "v"] },
  ]);
});
