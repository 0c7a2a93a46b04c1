import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareSchemes, elementsOf, emptyScheme, type Scheme } from "../src/index.ts";
import { scheme } from "./support/arbitrary-scheme.ts";

const unit = (id: string, xUm = 0) =>
  ({ id, tag: id.toUpperCase(), type: "1CC", xUm, yUm: 0, zUm: 0, turnMdeg: 0 }) as const;
const door = (id: string, containerId: string, widthUm = 900_000) => ({
  ...({ id, tag: id.toUpperCase(), containerId, face: "left", use: "door", framed: true } as const),
  ...{ offsetUm: 1_000_000, sillUm: 150_000, widthUm, heightUm: 2_000_000 },
});
const one: Scheme = { ...emptyScheme, containers: [unit("a")], openings: [door("d1", "a")] };

const told = (before: Scheme, after: Scheme) =>
  compareSchemes(before, after).elements.map((change) => ({
    id: change.id,
    how: change.before === null ? "set" : change.after === null ? "taken away" : "changed",
    with: change.with.map(({ id }) => id),
  }));

describe("compareSchemes(before, after)", () => {
  it("finds nothing between a scheme and the same scheme read anew", () => {
    fc.assert(
      fc.property(scheme, (any) => {
        expect(compareSchemes(any, structuredClone(any))).toEqual({ elements: [], site: null, basis: null });
      }),
      { seed: 1127, numRuns: 30 },
    );
  });

  it("tells every element of one and of the other once, when they share none", () => {
    fc.assert(
      fc.property(scheme, (any) => {
        const each = (all: ReturnType<typeof told>) => all.flatMap((change) => [change.id, ...change.with]).toSorted();
        const ids = elementsOf(any)
          .map(({ id }) => id)
          .toSorted();
        expect(each(told(emptyScheme, any))).toEqual(ids);
        expect(each(told(any, emptyScheme))).toEqual(ids);
      }),
      { seed: 4, numRuns: 30 },
    );
  });

  it("tells a changed element alone, not what is cut in it", () => {
    const moved = { ...one, containers: [unit("a", 500_000)] };
    expect(told(one, moved)).toEqual([{ id: "a", how: "changed", with: [] }]);
  });

  it("tells an opening by itself where its unit stays, and with its unit where that comes or goes", () => {
    const closed = { ...one, openings: [] };
    expect(told(one, closed)).toEqual([{ id: "d1", how: "taken away", with: [] }]);
    expect(told(one, emptyScheme)).toEqual([{ id: "a", how: "taken away", with: ["d1"] }]);
    expect(told(emptyScheme, one)).toEqual([{ id: "a", how: "set", with: ["d1"] }]);
  });

  it("tells a new opening in a unit that only moved as a change of its own", () => {
    const after = { ...one, containers: [unit("a", 500_000)], openings: [door("d1", "a"), door("d2", "a")] };
    expect(told(one, after).map(({ id, how }) => [id, how])).toEqual([
      ["a", "changed"],
      ["d2", "set"],
    ]);
  });

  it("tells site and basis apart from the elements", () => {
    const site = { ...one.site, groundZUm: 100_000 };
    expect(compareSchemes(one, { ...one, site })).toEqual({
      elements: [],
      site: { before: one.site, after: site },
      basis: null,
    });
  });
});
