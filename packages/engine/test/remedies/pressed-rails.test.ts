import { demoCostBook, type Mark, type Scheme, type Seat } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { assessStrength } from "../../src/assess-strength.ts";
import { premium } from "../../src/cost/premium.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { Trial } from "../../src/remedies/trial.ts";
import { pressedRails } from "../../src/remedies/ways/pressed-rails.ts";
import { strength } from "../../src/strength.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { drawn, listOf } from "./listed.ts";

/** A 20 ft unit 1.5 m along the one below, on these seats. Its fittings stand on rails, its rails on the last fittings below. */
function overhanging(seats: readonly Seat[]): Scheme {
  const stacked = drawnUnit({ type: "1CC", above: 1 });
  const containers = stacked.containers.map((unit) => (unit.id === "u2" ? { ...unit, xUm: 1_500_000 } : unit));
  return { ...stacked, containers, seats: [...seats] };
}

/** A seat of 100 mm, on the fitting and on the rail as thick as what is between them: 12.5 mm and 6 mm (ISO 1496-1, from memory). */
const seat = (id: string, xMm: number, yMm: number, packingMm: number): Seat => ({
  ...{ id, tag: id.toUpperCase(), upperId: "u2", lowerId: "u1", heldDown: true },
  ...{ xUm: xMm * 1000, yUm: yMm * 1000, lengthUm: 100_000, widthUm: 60_000, packingUm: packingMm * 1000 },
});
// the last fittings below are half of the hole spacing of 5853 mm (ISO 668) from the middle, the first ones above as far from theirs
const atTheEnd = [seat("s1", 2926.5, -1189, 12.5), seat("s2", 2926.5, 1189, 12.5)];
const inTheMiddle = [seat("s3", 1500 - 2926.5, -1189, 6), seat("s4", 1500 - 2926.5, 1189, 6)];

const marksOf = (scheme: Scheme): readonly Mark[] => assessStrength(scheme, undefined, strength).assessment.marks;
const open = (marks: readonly Mark[], unitId: string) => marks.find(({ id }) => id === `strength-open:${unitId}`);

function waysFor(scheme: Scheme, mark: Mark | undefined): readonly (readonly Trial[])[] {
  if (mark === undefined) throw new Error("strength leaves the unit open");
  return pressedRails({ scheme, analysis: analyse(scheme), mark });
}

const ladderOf = (ladders: readonly (readonly Trial[])[], kind: Trial["change"]["kind"]): readonly Trial[] =>
  ladders.find(([first]) => first?.change.kind === kind) ?? [];

describe("a unit whose own rails give way over the seats drawn under them", () => {
  const scheme = overhanging(atTheEnd);
  const before = open(marksOf(scheme), "u2");
  const found = ladderOf(waysFor(scheme, before), "stiffeners");

  it("is left open for web crippling, and stiffeners of 6, 10 and 12 mm are ways", () => {
    expect(before?.fact.kind === "strength-open" && before.fact.parts.map(({ check }) => check)).toEqual([
      "web crippling",
      "web crippling",
    ]);
    expect(found.map(({ change }) => (change.kind === "stiffeners" ? change.thicknessMm : undefined))).toEqual([
      6, 10, 12,
    ]);
  });

  it("is within its strength with the thinnest of them", () => {
    expect(open(marksOf(drawn(scheme, found[0]?.operations ?? [])), "u2")).toBeUndefined();
  });

  // By hand, rates for show of the demo's book: a plate 153 × 30 × 6 mm at 7850 kg/m³ is 0.2162 kg at 3.20, and its weld on both
  // faces 2 × 0.153 m at 0.24 h/m and 130: 0.6918 + 9.5472 each.
  it("takes two of them for 20.48", () => {
    const after = premium(drawn(scheme, found[0]?.operations ?? []), demoCostBook).total;
    expect(after - premium(scheme, demoCostBook).total).toBeCloseTo(2 * (0.6918 + 9.5472), 2);
  });
});

describe("a unit whose sheet is crushed under the seats drawn on its rails", () => {
  const scheme = overhanging([...atTheEnd, ...inTheMiddle]);
  const ladders = waysFor(scheme, open(marksOf(scheme), "u1"));
  const longer = ladderOf(ladders, "longer seats");

  // those at the end lie on fittings, over which no plate is longer than 140 mm
  it("has longer seats as ways, to 450 mm, and no stiffeners: they spare webs alone", () => {
    const lengths = longer.map(({ operations }) =>
      operations.flatMap((one) => (one.kind === "seat.change" ? [one.seat.lengthUm / 1000] : [])).toSorted(),
    );
    expect(lengths).toEqual([
      [140, 140, 200, 200],
      [140, 140, 300, 300],
      [140, 140, 450, 450],
    ]);
    expect(ladderOf(ladders, "stiffeners")).toEqual([]);
  });

  it("is within its strength on the longest", () => {
    expect(open(marksOf(drawn(scheme, longer.at(-1)?.operations ?? [])), "u1")).toBeUndefined();
  });
});

describe("a unit whose rails give way where no seat is drawn", () => {
  const scheme = overhanging([]);

  it("is offered seats with stiffeners, and works with them as told", { timeout: 60_000 }, () => {
    const { offered } = listOf(scheme, "strength-open:u2");
    const way = offered.find(({ change }) => change.kind === "seats" && change.stiffenerMm !== undefined);
    expect(way?.verdict).toBe("works with steel");
    const after = drawn(scheme, way?.operations ?? []);
    // only rails that come down have a web to stiffen: fittings on rails have none
    expect(after.seats.map(({ stiffenerUm }) => stiffenerUm).toSorted()).toEqual([6000, 6000, undefined, undefined]);
    expect(open(marksOf(after), "u2")).toBeUndefined();
  });
});
