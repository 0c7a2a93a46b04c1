import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const g = { id: "g", type: "1CC" as const, x: 0, y: 0 };
const onG = (x: number) => assess(schemeOf({ units: [g, { ...g, id: "u", x, z: 2591 }], pads: padsUnder(g) }));

// u lies 3500 mm along g: its middle is 3500 − 2926.5 = 573.5 mm past the last thing under it, the fittings of g. Its tail
// stands on the side rails of g, 6 mm to pack, its rails over those fittings, 12.5 mm: two heights, and all of it
// on the fittings as it begins to turn.
it("a unit that tips is told to tip, and not also to rock and to stand on rails that take nothing", () => {
  const assessment = onG(3500);
  expect(assessment.marks.filter(({ elements }) => elements.includes("u")).map(({ id }) => id)).toEqual([
    "tips-over:u",
  ]);
});

it("the bearings and their gaps are kept, with no force where it lifts off", () => {
  const assessment = onG(3500);
  expect(bearingOf(assessment, "u:front-left")).toMatchObject({ on: "rail", gapMm: 6, forceKn: 0 });
  expect(bearingOf(assessment, "u:left-rail:g")).toMatchObject({ on: "fitting", gapMm: 12.5 });
});

it("drawn back until it stands, both are told", () => {
  const assessment = onG(1000);
  expect(factsOf(assessment, "tips-over")).toEqual([]);
  expect(factsOf(assessment, "rocks")).toMatchObject([{ gapMm: 6.5 }]);
  expect(factsOf(assessment, "borne-on-rail")).toMatchObject([{ elements: ["u", "g"] }]);
});

// Turned across the far end of a, its middle 200 mm outside a's north rail (axis at 1219 − 30 = 1189): both rails of u
// cross that rail, and all it weighs is there as it turns. That it stands on a rail is then no symptom.
it("a rail that takes all of what tips is still told", () => {
  const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
  const assessment = assess(
    schemeOf({ units: [a, { ...g, id: "u", y: 1389, z: 2896, turn: 90 }], pads: padsUnder(a) }),
  );
  expect(factsOf(assessment, "tips-over")).toMatchObject([{ outsideMm: 200, elements: ["u"] }]);
  const [rail] = factsOf(assessment, "borne-on-rail");
  expect(rail?.crossings).toHaveLength(2);
  expect(rail?.crossings.every(({ forceKn }) => forceKn > 0)).toBe(true);
});
