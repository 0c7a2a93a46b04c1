import {
  applyOperations,
  CostBook,
  demoCostBook,
  emptyScheme,
  type Mark,
  type Operation,
  type Scheme,
  standsApart,
} from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { schemeOf, padsUnder } from "../../../../tests/support/scheme-of.ts";
import { premium } from "../../src/cost/premium.ts";
import { premiumDifference } from "../../src/cost/premium-difference.ts";

const unit = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const stack = schemeOf({ units: [unit, { ...unit, id: "b", z: 2896 }], pads: padsUnder(unit) });

function after(scheme: Scheme, operations: Operation[]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
}
const withOpening = (more: object = {}) =>
  after(stack, [
    {
      kind: "opening.cut",
      opening: {
        ...{ id: "w1", tag: "W1", containerId: "a", face: "right", use: "window", offsetUm: 4e6, sillUm: 9e5 },
        ...{ widthUm: 1.2e6, heightUm: 1.2e6, framed: false },
        ...more,
      },
    },
  ]);
const quantities = (scheme: Scheme) =>
  Object.fromEntries(
    premium(scheme, demoCostBook).lines.map(({ item, section, quantity }) => [
      section === null ? item : `${item} ${section}`,
      quantity,
    ]),
  );

describe("premium", () => {
  it("is nothing for containers stacked plainly on pads, and the book's figures are for show", () => {
    expect(premium(stack, demoCostBook)).toEqual({
      ...{ currency: "USD", lines: [], total: 0, forShow: true, notPriced: [], units: [], marks: [] },
      quantities: {
        ...{ cutM: 0, weldM: [], steelKg: [], connections: [], pads: 0, padConcreteM3: 0, craneLifts: 0 },
        hours: { shop: 0, site: 0, crane: 0, engineering: 0 },
      },
    });
    expect(premium(emptyScheme, demoCostBook).total).toBe(0);
  });

  // 4.8 m round; 0.06 h/m · 95 = 27.36; 0.15 · 4.8 · 95 = 68.40; 1 h · 150
  it("of a bare cut 1.2 × 1.2 m is 4.8 m of cutting and paint and an hour of an engineer: 245.76", () => {
    expect(premium(withOpening(), demoCostBook).total).toBeCloseTo(245.76, 9);
  });

  // tube 60x60x3, sharp corners: 4·57·3 = 684 mm², 5.3694 kg/m; 4.8 m = 25.773 kg. Weld 4.8 + 4·0.24 = 5.76 m.
  // 245.76 + 25.773·3.2 + 5.76·0.24·95 = 245.76 + 82.474 + 131.328 = 459.562
  it("of the same cut with its frame adds 25.77 kg of tube and 5.76 m of weld: 459.56", () => {
    const framed = withOpening({ framed: true });
    expect(quantities(framed)["steel tube 60x60x3"]).toBeCloseTo(25.773, 3);
    expect(quantities(framed)["weld of 5 mm"]).toBeCloseTo(5.76, 9);
    expect(premium(framed, demoCostBook).total).toBeCloseTo(459.562, 2);
  });

  it("is worked at site rates where the sheet is cut after placing: 130 for each 95 of hand work", () => {
    const [shop, site] = [withOpening(), withOpening({ cut: "after placing" })].map(
      (scheme) => premium(scheme, demoCostBook).total - 150,
    );
    expect((site ?? 0) / (shop ?? 1)).toBeCloseTo(130 / 95, 9);
  });

  // HSS4x4x1/4: 3.37 in² = 2174.2 mm² (printed), 17.067 kg/m · 2.5 m = 42.668 kg; plates 2·200·200·12 mm³ = 7.536 kg
  it("of a post on a pad of its own: its steel, two plates, ends welded, a lift, the engineer, and the pad", () => {
    const place = {
      id: "p1",
      tag: "P1",
      xUm: 0,
      yUm: 0,
      baseZUm: 0,
      topZUm: 2.5e6,
      turnMdeg: 0,
      section: "HSS4x4x1/4",
    };
    const pad = {
      id: "f9",
      tag: "F9",
      xUm: 0,
      yUm: 0,
      topZUm: 0,
      lengthUm: 6e5,
      widthUm: 6e5,
      depthUm: 4e5,
      turnMdeg: 0,
    };
    const drawn = after(stack, [
      { kind: "post.set", post: place },
      { kind: "pad.set", pad },
    ]);
    expect(quantities(drawn)).toMatchObject({ pad: 1, "crane lift": 1, engineering: 1 });
    expect(quantities(drawn)["steel HSS4x4x1/4"]).toBeCloseTo(42.668, 2);
    expect(quantities(drawn)["steel plate"]).toBeCloseTo(7.536, 9);
  });

  it("leaves out, and names, steel that the catalogue does not know", () => {
    const post = { id: "p1", tag: "P1", xUm: 0, yUm: 0, baseZUm: 0, topZUm: 2.5e6, turnMdeg: 0, section: "old rail" };
    const drawn = premium(after(stack, [{ kind: "post.set", post }]), demoCostBook);
    expect(drawn.notPriced).toEqual(["p1"]);
    expect(drawn.lines.some(({ item }) => item === "steel")).toBe(false);
  });

  it("leaves stock locks between fittings one above the other to the plain stack, and counts every other connection", () => {
    const lock = (id: string, containerId: string, kind: "lock" | "made connection" | "hold-down") => ({
      kind: "lock.set" as const,
      lock: { id, tag: `L${id.length}`, containerId, fitting: "front-left" as const, kind },
    });
    const locked = premium(after(stack, [lock("k", "b", "lock")]), demoCostBook);
    expect(locked).toMatchObject({ lines: [], total: 0, quantities: { connections: [] } });
    const joined = premium(
      after(stack, [lock("k", "b", "made connection"), lock("kk", "a", "hold-down")]),
      demoCostBook,
    );
    expect(joined.quantities.connections).toEqual([
      { kind: "hold-down", count: 1 },
      { kind: "made connection", count: 1 },
    ]);
    // a stock lock on a pad holds nothing and is no part of a plain stack: 60 + 0.1 h · 130
    expect(premium(after(stack, [lock("k", "a", "lock")]), demoCostBook).total).toBeCloseTo(73, 9);
  });

  it("has the money of each unit, of each mark, and none for a mark whose answer is not known", () => {
    const mark = (verdict: Mark["verdict"], elements: string[]): Mark => ({
      ...{ id: `${verdict} ${elements.join()}`, verdict, elements, certainty: "derived", basis: "a test" },
      ...{ at: { xMm: 0, yMm: 0, zMm: 0 }, fact: { kind: "openings-overlap" } },
    });
    const marks = [mark("not checked", ["w1", "a"]), mark("needs the engineer", ["w1"]), mark("does not work", ["b"])];
    const drawn = premium(withOpening(), demoCostBook, marks);
    expect(drawn.units).toEqual([{ containerId: "a", money: drawn.total }]);
    expect(drawn.marks.map(({ money }) => money)).toEqual([drawn.total, null, null]);
    expect(standsApart(drawn)).toBe(true);
    expect(standsApart(premium(withOpening(), demoCostBook, marks.slice(0, 1)))).toBe(false);
  });

  it("is not for show once every figure has a source", () => {
    const sourced = (figures: Record<string, { amount: number }>) =>
      Object.fromEntries(Object.entries(figures).map(([name, { amount }]) => [name, { amount, source: "our quote" }]));
    const book = CostBook.parse({
      ...demoCostBook,
      rates: sourced(demoCostBook.rates),
      labour: sourced(demoCostBook.labour),
    });
    expect(premium(withOpening(), book).forShow).toBe(false);
  });

  it("grows with every rate, never otherwise, and is the sum of its lines", () => {
    const scheme = withOpening({ framed: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5, noNaN: true }), (factor) => {
        const rates = Object.entries(demoCostBook.rates).map(([name, rate]) => [
          name,
          { ...rate, amount: rate.amount * factor },
        ]);
        const dearer = premium(scheme, CostBook.parse({ ...demoCostBook, rates: Object.fromEntries(rates) }));
        const plain = premium(scheme, demoCostBook);
        expect(dearer.total / plain.total).toBeCloseTo(factor, 9);
        expect(dearer.lines.reduce((sum, { money }) => sum + money, 0)).toBeCloseTo(dearer.total, 9);
      }),
      { seed: 7, numRuns: 50 },
    );
  });
});

describe("premiumDifference", () => {
  it("explains line by line what a wider window costs more, to the whole difference", () => {
    const [narrow, wide] = [withOpening({ framed: true }), withOpening({ framed: true, widthUm: 1.8e6 })].map(
      (scheme) => premium(scheme, demoCostBook),
    );
    if (narrow === undefined || wide === undefined) throw new Error("two premiums");
    const lines = premiumDifference(narrow, wide);
    expect(lines.map(({ item }) => item)).toEqual(["cut", "paint repair", "steel", "weld of 5 mm"]);
    expect(lines.reduce((sum, { money }) => sum + money, 0)).toBeCloseTo(wide.total - narrow.total, 9);
    expect(premiumDifference(narrow, narrow)).toEqual([]);
  });

  it("names what is new and what is gone", () => {
    const [none, one] = [premium(stack, demoCostBook), premium(withOpening(), demoCostBook)];
    expect(premiumDifference(none, one).every(({ before }) => before === null)).toBe(true);
    expect(premiumDifference(one, none).every(({ after: now }) => now === null)).toBe(true);
  });
});
