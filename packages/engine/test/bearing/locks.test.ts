import { assess } from "@cornerway/engine";
import type { Lock } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../../../../tests/support/marks-of.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const f1 = { ...g1, id: "f1", z: 2591 } as const;
const pads = padsUnder(g1);

const refusal = (
  parts: Parameters<typeof schemeOf>[0],
  kind: Lock["kind"],
  unit: string,
  fitting: Lock["fitting"] = "front-left",
) =>
  factsOf(assess(schemeOf({ ...parts, locks: [{ id: "l1", in: unit, fitting, kind }] })), "lock-cannot-serve").map(
    ({ why }) => why,
  );

describe("a stock lock", () => {
  it("serves between fittings corner on corner, either way round, within 10 mm along and 5 mm across", () => {
    for (const upper of [f1, { ...f1, turn: 180 }, { ...f1, x: 10, y: 5 }])
      expect(refusal({ units: [g1, upper], pads }, "lock", "f1")).toEqual([]);
  });

  it("does not where hole centres are apart, where it bears off the corner, or where apertures cross", () => {
    expect(refusal({ units: [g1, { ...f1, x: 11 }], pads }, "lock", "f1")).toEqual(["hole centres apart"]);
    expect(refusal({ units: [g1, { ...f1, y: 26 }], pads }, "lock", "f1")).toEqual(["bears off the corner"]);
    // Turned back a quarter, (x, y) to (y, −x), about its front-left fitting, −2926.5 and 1129.5 from its middle: the holes
    // stand on each other, the apertures cross.
    const turned = { ...f1, x: -2926.5 - 1129.5, y: 1129.5 - 2926.5, turn: 270 };
    expect(refusal({ units: [g1, turned], pads }, "lock", "f1")).toEqual(["apertures cross"]);
  });

  it("does not on a rail, on a pad, on bare ground, over a gap, or on nothing", () => {
    expect(refusal({ units: [g1, { ...f1, x: 1000 }], pads }, "lock", "f1")).toEqual(["not on a fitting"]);
    expect(refusal({ units: [g1], pads }, "lock", "g1")).toEqual(["not on a fitting"]);
    expect(refusal({ units: [g1] }, "lock", "g1")).toEqual(["on bare ground"]);
    expect(refusal({ units: [g1, { ...f1, z: 2601 }], pads }, "lock", "f1")).toEqual(["gap to pack"]);
    expect(refusal({ units: [g1, { ...f1, x: 1000 }], pads }, "lock", "f1", "door-left")).toEqual(["nothing under it"]);
  });

  it("that cannot serve makes the drawing not work there, one that does changes no verdict", () => {
    const scheme = { units: [g1, f1], pads };
    const locks = [{ id: "l1", in: "f1", fitting: "front-left", kind: "lock" } as const];
    expect(verdictOf(assess(schemeOf({ ...scheme, locks })), "f1")).toBe("works as built");
    const wrong = { units: [g1, { ...f1, x: 20 }], pads, locks };
    expect(verdictOf(assess(schemeOf(wrong)), "f1")).toBe("does not work");
  });
});

describe("a hold-down", () => {
  it("serves into a pad only", () => {
    expect(refusal({ units: [g1], pads }, "hold-down", "g1")).toEqual([]);
    expect(refusal({ units: [g1, f1], pads }, "hold-down", "f1")).toEqual(["not on a pad"]);
    expect(refusal({ units: [g1] }, "hold-down", "g1")).toEqual(["on bare ground"]);
  });
});

describe("a made connection", () => {
  it("serves onto anything solid: fitting, rail, post, pad; not onto ground or nothing", () => {
    expect(refusal({ units: [g1, { ...f1, x: 20 }], pads }, "made connection", "f1")).toEqual([]);
    expect(refusal({ units: [g1, { ...f1, x: 1000 }], pads }, "made connection", "f1")).toEqual([]);
    expect(refusal({ units: [g1], pads }, "made connection", "g1")).toEqual([]);
    expect(refusal({ units: [g1] }, "made connection", "g1")).toEqual(["on bare ground"]);
  });

  it("settles the corners that need one: how many of them have it is counted", () => {
    const parts = { units: [g1, { ...f1, x: 20 }], pads };
    const corners = ["front-left", "front-right", "door-left", "door-right"] as const;
    const at = (count: number) =>
      corners
        .slice(0, count)
        .map((fitting) => ({ id: `l-${fitting}`, in: "f1", fitting, kind: "made connection" as const }));
    for (const count of [0, 1, 4])
      expect(factsOf(assess(schemeOf({ ...parts, locks: at(count) })), "made-connection")).toMatchObject([
        { corners: 4, drawn: count, why: "hole centres apart" },
      ]);
  });

  it("is told twice where two are drawn at one fitting: the second joins nothing more", () => {
    const locks = ["l1", "l2"].map((id) => ({ id, in: "f1", fitting: "front-left", kind: "lock" }) as const);
    const facts = factsOf(assess(schemeOf({ units: [g1, f1], pads, locks })), "lock-cannot-serve");
    expect(facts.map(({ why, elements }) => [elements[0], why])).toEqual([["l2", "joined already"]]);
  });

  it("is named at the bearing it holds", () => {
    const locks = [{ id: "l1", in: "g1", fitting: "front-left", kind: "hold-down" } as const];
    expect(bearingOf(assess(schemeOf({ units: [g1], pads, locks })), "g1:front-left")?.heldById).toBe("l1");
  });
});
