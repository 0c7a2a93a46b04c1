import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  applyOperation,
  applyOperations,
  canonicalJson,
  digestOf,
  emptyScheme,
  Operation,
  Scheme,
  schemeFaults,
  touchedElements,
  type Applied,
} from "../src/index.ts";
import { independent, operation, scheme } from "./support/arbitrary-scheme.ts";

const runs = { seed: 668, numRuns: 400 };
const kinds = Operation.options.map((option) => option.shape.kind.value);

function applied(result: Applied): Extract<Applied, { ok: true }> {
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result;
}

describe("applyOperation", () => {
  it("and then its inverse leaves the digest as it was, for every kind of operation", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(scheme, operation, (before, change) => {
        const result = applyOperation(before, change);
        if (!result.ok) return;
        seen.add(change.kind);
        expect(digestOf(applied(applyOperations(result.scheme, result.inverse)).scheme)).toBe(digestOf(before));
      }),
      { ...runs, numRuns: 2500 },
    );
    expect([...seen].sort()).toEqual([...kinds].sort());
  });

  it("keeps a valid scheme valid: its shape, its order, its ids, labels and units", () => {
    fc.assert(
      fc.property(scheme, operation, (before, change) => {
        const result = applyOperation(before, change);
        const after = result.ok ? result.scheme : before;
        expect(Scheme.safeParse(after).error?.issues ?? []).toEqual([]);
        expect(schemeFaults(after)).toEqual([]);
      }),
      runs,
    );
  });

  it("does not touch the scheme it is given", () => {
    fc.assert(
      fc.property(scheme, operation, (before, change) => {
        const text = canonicalJson(before);
        applyOperation(before, change);
        expect(canonicalJson(before)).toBe(text);
      }),
      runs,
    );
  });

  it("changes nothing outside of what touchedElements says it writes", () => {
    fc.assert(
      fc.property(scheme, operation, (before, change) => {
        const result = applyOperation(before, change);
        if (!result.ok) return;
        const { writes } = touchedElements(before, change);
        expect(changedKeys(before, result.scheme).filter((key) => !writes.includes(key))).toEqual([]);
      }),
      runs,
    );
  });
});

describe("independent operations", () => {
  it("give one digest in any order", () => {
    const shuffled = fc
      .array(operation, { minLength: 4, maxLength: 30, size: "max" })
      .chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray([...list.keys()], { minLength: list.length })));
    let ordered = 0;
    fc.assert(
      fc.property(scheme, shuffled, (before, [list, order]) => {
        const kept = new Set<number>();
        list.forEach((change, at) => {
          const free = [...kept].every((other) => independent(before, change, list[other] ?? change));
          if (free && applyOperation(before, change).ok) kept.add(at);
        });
        ordered += kept.size > 1 ? 1 : 0;
        const given = [...kept].flatMap((at) => list[at] ?? []);
        const other = order.filter((at) => kept.has(at)).flatMap((at) => list[at] ?? []);
        expect(digestOf(applied(applyOperations(before, other)).scheme)).toBe(
          digestOf(applied(applyOperations(before, given)).scheme),
        );
      }),
      runs,
    );
    expect(ordered).toBeGreaterThan(200);
  });

  it("stay applicable after one another: the later one is re-based as it is", () => {
    fc.assert(
      fc.property(scheme, operation, operation, (before, one, other) => {
        const [first, alone] = [applyOperation(before, one), applyOperation(before, other)];
        if (!first.ok || !alone.ok || !independent(before, one, other)) return;
        expect(applyOperation(first.scheme, other).ok).toBe(true);
      }),
      { ...runs, numRuns: 1000 },
    );
  });
});

describe("applyOperations", () => {
  it("and then the inverse of the whole list leaves the digest as it was", () => {
    fc.assert(
      fc.property(scheme, fc.array(operation, { maxLength: 12, size: "max" }), (before, list) => {
        const result = applyOperations(before, list);
        if (!result.ok) return;
        expect(digestOf(applied(applyOperations(result.scheme, result.inverse)).scheme)).toBe(digestOf(before));
      }),
      runs,
    );
  });

  it("applies none when one is refused", () => {
    const list: Operation[] = [
      { kind: "site.change", site: { ...emptyScheme.site, groundZUm: 5 } },
      { kind: "pad.remove", id: "f1" },
    ];
    expect(applyOperations(emptyScheme, list)).toEqual({
      ok: false,
      refusal: { reason: "not-found", elementId: "f1", by: ["f1"] },
    });
  });
});

describe("refusals", () => {
  const unit = { id: "c1", tag: "C1", type: "1CC" as const, xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 };
  const door = {
    ...{ id: "o1", tag: "O1", containerId: "c1", face: "left" as const, use: "door" as const },
    ...{ offsetUm: 0, sillUm: 0, widthUm: 900_000, heightUm: 2_100_000, framed: true },
  };
  const column = { id: "p1", tag: "P1", xUm: 0, yUm: 0, baseZUm: 0, topZUm: 100, turnMdeg: 0, section: "HSS 4x4x1/4" };
  const base = applied(
    applyOperations(emptyScheme, [
      { kind: "container.place", container: unit },
      { kind: "opening.cut", opening: door },
      { kind: "post.set", post: column },
    ]),
  ).scheme;

  it.each<[string, Operation, object]>([
    [
      "an id that is taken, by whatever kind",
      { kind: "post.set", post: { ...column, id: "o1", tag: "P9" } },
      { reason: "id-taken", elementId: "o1", by: ["o1"] },
    ],
    [
      "a label that is taken, by whatever kind",
      { kind: "post.set", post: { ...column, id: "p9", tag: "C1" } },
      { reason: "tag-taken", elementId: "p9", by: ["c1"] },
    ],
    [
      "an opening in a unit that is not there",
      { kind: "opening.cut", opening: { ...door, id: "o2", tag: "O2", containerId: "c9" } },
      { reason: "not-found", elementId: "o2", by: ["c9"] },
    ],
    [
      "a unit that still has openings",
      { kind: "container.remove", id: "c1" },
      { reason: "still-holds", elementId: "c1", by: ["o1"] },
    ],
    [
      "a post whose head is not above its foot",
      { kind: "post.length", id: "p1", baseZUm: 100, topZUm: 100 },
      { reason: "not-valid", elementId: "p1", by: ["p1"] },
    ],
    [
      "an element that is not there",
      { kind: "container.move", id: "c9", xUm: 0, yUm: 0, zUm: 0 },
      { reason: "not-found", elementId: "c9", by: ["c9"] },
    ],
  ])("name %s", (_what, change, refusal) => {
    expect(applyOperation(base, change)).toEqual({ ok: false, refusal });
  });

  it("stop at 500 units", () => {
    const containers = Array.from({ length: 500 }, (_, n) => ({ ...unit, id: `u${1000 + n}`, tag: `U${n}` }));
    const full = Scheme.parse({ ...emptyScheme, containers });
    const one = applyOperation(full, { kind: "container.place", container: unit });
    expect(one).toEqual({ ok: false, refusal: { reason: "full", elementId: "c1", by: [] } });
  });
});

function changedKeys(before: Scheme, after: Scheme): string[] {
  const [was, is] = [byKey(before), byKey(after)];
  return [...new Set([...was.keys(), ...is.keys()])].filter((key) => was.get(key) !== is.get(key));
}

const byKey = ({ version: _version, site, basis, ...collections }: Scheme) =>
  new Map([
    ["site", canonicalJson(site)],
    ["basis", canonicalJson(basis)],
    ...Object.values(collections)
      .flat()
      .map((element): [string, string] => [element.id, canonicalJson(element)]),
  ]);
