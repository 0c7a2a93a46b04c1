import { assess } from "@cornerway/engine";
import { applyOperations, emptyScheme, standingOf, type Judged, type Operation, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { unit } from "../support/sample.ts";

/** ISO 668: a 1CC unit is 2.591 m high. */
const heightUm = 2_591_000;

/** Three 20 ft units stacked corner on corner, and a fourth that stands by itself. */
const stacked = drawn(emptyScheme, [
  ...[0, 1, 2].map((storey): Operation => {
    const container = { ...unit(1), id: `u${storey}`, tag: `U${storey + 1}`, zUm: storey * heightUm };
    return { kind: "container.place", container };
  }),
  { kind: "container.place", container: { ...unit(4), id: "alone", tag: "A1" } },
]);

function drawn(scheme: Scheme, operations: readonly Operation[]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme;
}

const judged = (letter: string, scheme: Scheme): Judged => ({ letter, scheme, result: assess(scheme) });
const before = judged("A", stacked);
const after = (...operations: Operation[]) => judged("B", drawn(stacked, operations));
const loadOn = (containerId: string): Operation => ({
  kind: "load.put",
  load: { id: "l1", containerId, surface: "floor", case: "imposed", pressurePa: 2000 },
});

describe("a judgement on an element", () => {
  it("goes stale by a load two units above it, which alters no element it bears on but the force that comes down", () => {
    const standing = standingOf("u0", before, after(loadOn("u2")));
    expect(standing.state).toBe("stale");
    expect(standing.changed.elements).toEqual([]);
    expect(standing.changed.results).toEqual(expect.arrayContaining(["bearings", "load path"]));
  });

  it("stands when the load is put on a unit that has nothing to do with it", () => {
    expect(standingOf("u0", before, after(loadOn("alone"))).state).toBe("stands");
  });

  it("goes stale by what is cut in it, and by what is taken away from on top of it, and names both", () => {
    const opening = {
      ...{ id: "w1", tag: "W1", containerId: "u0", face: "left" as const, use: "window" as const, framed: false },
      ...{ offsetUm: 2_000_000, sillUm: 900_000, widthUm: 1_000_000, heightUm: 1_000_000 },
    };
    const cut = standingOf("u0", before, after({ kind: "opening.cut", opening }));
    expect(cut.changed.elements).toEqual(["w1"]);
    const gone = standingOf(
      "u0",
      before,
      after({ kind: "container.remove", id: "u2" }, { kind: "container.remove", id: "u1" }),
    );
    expect(gone.changed.elements).toEqual(["u1"]);
    expect(gone.state).toBe("stale");
  });

  it("goes stale by the site and by the design basis, whatever element it is on", () => {
    const moved = after({ kind: "site.change", site: { ...stacked.site, groundZUm: -100_000 } });
    expect(standingOf("alone", before, moved).changed.whole).toContain("site and code edition");
    const other = judged("B", { ...stacked, basis: { ...stacked.basis, soil: { class: "sand" } } });
    expect(standingOf("alone", before, other).changed.whole).toEqual(["design basis"]);
  });

  it("waits while the newest revision has no result, and is stale at once where the drawing alone says so", () => {
    const unjudged = (scheme: Scheme): Judged => ({ letter: "B", scheme, result: null });
    expect(standingOf("u0", before, unjudged(drawn(stacked, [loadOn("alone")]))).state).toBe("waits");
    expect(standingOf("u0", before, unjudged(drawn(stacked, [loadOn("u0")]))).state).toBe("stale");
  });

  it("goes stale when another engine judges, and when the result it was given for can no longer be read", () => {
    const result = before.result && { ...before.result, engineVersion: "99.0.0" };
    expect(standingOf("u0", before, { ...before, result }).changed.whole).toEqual(["engine version"]);
    expect(standingOf("u0", { ...before, result: null }, before).changed.whole).toEqual(["result cannot be read"]);
  });
});
