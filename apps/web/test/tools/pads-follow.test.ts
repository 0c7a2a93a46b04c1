import { placeContainer } from "@cornerway/engine";
import { applyOperations, emptyScheme } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { moveUnit } from "../../src/tools/move-unit.ts";
import { carries } from "../../src/tools/pads-follow.ts";
import { placeUnit } from "../../src/tools/place-unit.ts";
import { removeElements } from "../../src/tools/remove-elements.ts";
import { turnUnit } from "../../src/tools/turn-unit.ts";
import { unitAt } from "../support/schemes.ts";

const after = (scheme: Scheme, operations: Parameters<typeof applyOperations>[1]): Scheme => {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
};

const g1 = unitAt("g1", "G1", 0, 0, 0);
const alone = after(emptyScheme, placeUnit(emptyScheme, g1));

const everyFootOnAPad = (scheme: Scheme, id: string) => {
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit === undefined) throw new Error(`no unit ${id}`);
  return placeContainer(unit).bottomFittings.every(({ at }) => scheme.pads.some((pad) => carries(pad, at)));
};

describe("pads follow the units they hold", () => {
  it("a unit set on the ground stands on four pads, set in the same act", () => {
    expect(alone.pads).toHaveLength(4);
    expect(everyFootOnAPad(alone, "g1")).toBe(true);
  });

  it("a unit beside it shares two pads and brings two", () => {
    const g2 = unitAt("g2", "G2", 0, 2438, 0);
    const both = after(alone, placeUnit(alone, g2));
    expect(both.pads).toHaveLength(6);
    expect(everyFootOnAPad(both, "g2")).toBe(true);
  });

  it("a unit set on another brings none", () => {
    const f1 = unitAt("f1", "F1", 0, 0, 2896);
    expect(after(alone, placeUnit(alone, f1)).pads).toHaveLength(4);
  });

  it("moved or turned, a unit keeps its four pads under its corners, by the same ids", () => {
    const moved = after(alone, moveUnit(alone, { ...turnUnit(g1, 90_000), xUm: 5_000_000 }));
    expect(everyFootOnAPad(moved, "g1")).toBe(true);
    expect(moved.pads.map(({ id }) => id)).toEqual(alone.pads.map(({ id }) => id));
  });

  it("shared pads stay with the neighbour when a unit moves away", () => {
    const g2 = unitAt("g2", "G2", 0, 2438, 0);
    const both = after(alone, placeUnit(alone, g2));
    const apart = after(both, moveUnit(both, { ...g2, yUm: 8_000_000 }));
    expect(everyFootOnAPad(apart, "g1")).toBe(true);
    expect(everyFootOnAPad(apart, "g2")).toBe(true);
  });

  it("taken away, a unit takes its loads and its own pads along and leaves an empty sheet", () => {
    expect(after(alone, removeElements(alone, ["g1"]))).toEqual(emptyScheme);
  });

  it("taken away, a unit takes what is cut in it along, and its inverse brings all of it back", () => {
    const opening = {
      id: "o1",
      tag: "D1",
      containerId: "g1",
      face: "right",
      use: "door",
      offsetUm: 5_000_000,
      sillUm: 200_000,
      widthUm: 1_000_000,
      heightUm: 2_000_000,
      framed: true,
    } as const;
    const cut = after(alone, [{ kind: "opening.cut", opening }]);
    const taken = applyOperations(cut, removeElements(cut, ["g1"]));
    if (!taken.ok) throw new Error("the unit is taken away");
    expect(taken.scheme).toEqual(emptyScheme);
    expect(after(taken.scheme, taken.inverse)).toEqual(cut);
  });
});
