import { premium, premiumDifference } from "@cornerway/engine";
import { applyOperations, demoCostBook, Operation, readScheme, type Scheme } from "@cornerway/schema";
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { z } from "zod";

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../shared/demo/${name}`, import.meta.url), "utf8"));

function demo(): Scheme {
  const reading = readScheme(read("scheme.json"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.fields));
  return reading.scheme;
}

function withTwoPosts(): Scheme {
  const applied = applyOperations(demo(), z.array(Operation).parse(read("two-posts.json")));
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
}

// Two posts HSS6x6x3/8, each 5.792 m long from a pad of its own to the turned unit, by the rates for show.
// Area 7.58 in² = 4890.3 mm² (AISC shapes database v15.0, from memory), density 7850 kg/m³: 38.389 kg/m.
// Steel   5.792 · 38.389 = 222.35 kg; plates 2 · 200 · 200 · 12 mm³ · 7850 = 7.536 kg; 229.886 kg · 3.20  =  735.63
// Weld    both ends all round, 2 · 4 · 152.4 mm = 1.2192 m · 0.24 h/m · 130                               =   38.04
// Lift    0.5 h · 280                                                                                    =  140.00
// Engineer 2 h · 150                                                                                     =  300.00
// Pad     one, 900                                                                                       =  900.00
//         0.9 · 0.9 · 0.6 m is 0.9 · 0.9 · 0.15 = 0.1215 m³ more than usual (0.45 deep) · 450            =   54.68
// One post 2168.35, two 4336.70.
it("two posts on pads of their own add 4,337 by the rates for show", () => {
  const [before, after] = [premium(demo(), demoCostBook), premium(withTwoPosts(), demoCostBook)];
  expect(after.total - before.total).toBeCloseTo(4336.7, 0);
  const { steelKg, pads, craneLifts, hours } = after.quantities;
  const kgOf = (from: typeof steelKg, section: string) => from.find((each) => each.section === section)?.massKg ?? 0;
  const plates = kgOf(steelKg, "plate") - kgOf(before.quantities.steelKg, "plate");
  expect(plates).toBeCloseTo(15.072, 6);
  expect(pads - before.quantities.pads).toBe(2);
  expect(craneLifts - before.quantities.craneLifts).toBe(2);
  expect(hours.engineering - before.quantities.hours.engineering).toBeCloseTo(4, 9);
  expect(hours.crane - before.quantities.hours.crane).toBeCloseTo(1, 9);
  expect(hours.site - before.quantities.hours.site).toBeCloseTo(2 * 1.2192 * 0.24, 3);
});

it("the difference names the posts and the pads alone, and adds up to it", () => {
  const [before, after] = [premium(demo(), demoCostBook), premium(withTwoPosts(), demoCostBook)];
  const lines = premiumDifference(before, after);
  expect([...new Set(lines.map(({ elementId }) => elementId))].toSorted()).toEqual(["b11", "b12", "p1", "p2"]);
  expect(lines.reduce((sum, { money }) => sum + money, 0)).toBeCloseTo(after.total - before.total, 9);
});
