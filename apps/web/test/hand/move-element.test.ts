import { applyOperations } from "@cornerway/schema";
import type { Opening, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { moveElement } from "../../src/hand/move-element.ts";
import { stepElement } from "../../src/hand/step-element.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const f1 = unitAt("f1", "F1", 0, 0, 2896);
const window: Opening = {
  id: "o1",
  tag: "W1",
  containerId: "f1",
  face: "right",
  use: "window",
  offsetUm: 4_000_000,
  sillUm: 1_000_000,
  widthUm: 1_000_000,
  heightUm: 1_000_000,
  framed: true,
};
const scheme: Scheme = { ...schemeOf([g1, f1]), openings: [window] };
const at = (xMm: number, yMm: number, zMm: number) => ({ xMm, yMm, zMm });

const unitAfter = (operations: Parameters<typeof applyOperations>[1], id: string) => {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme.containers.find((unit) => unit.id === id);
};

describe("moveElement(scheme, id, projection, from, to, reach)", () => {
  it("in the south elevation a unit moves east and west, never in depth", () => {
    const operations = moveElement(scheme, "f1", "south", at(0, -1219, 4000), at(3004, 500, 4000), 100);
    expect(unitAfter(operations, "f1")).toMatchObject({ xUm: 3_000_000, yUm: 0, zUm: 2_896_000 });
  });

  it("lifted or lowered in elevation, a unit comes to rest on what lies below it", () => {
    const beside = moveElement(scheme, "f1", "south", at(0, 0, 4000), at(20_000, 0, 900), 100);
    expect(unitAfter(beside, "f1")).toMatchObject({ xUm: 20_000_000, zUm: 0 });
    const up = moveElement(scheme, "g1", "south", at(0, 0, 1000), at(0, 0, 6600), 100);
    // On the roof of F1, two units of 2896 mm up (ISO 668).
    expect(unitAfter(up, "g1")).toMatchObject({ zUm: 5_792_000 });
  });

  it("in plan a unit stays on its level", () => {
    const operations = moveElement(scheme, "f1", "plan", at(0, 0, 2896), at(505, 2004, 2896), 50);
    expect(unitAfter(operations, "f1")).toMatchObject({ xUm: 510_000, yUm: 2_000_000, zUm: 2_896_000 });
  });

  it("an opening moves along and up its own wall in steps of 10 mm", () => {
    expect(moveElement(scheme, "o1", "south", at(0, 0, 4000), at(253, 0, 3897), 100)).toEqual([
      {
        kind: "opening.shape",
        id: "o1",
        offsetUm: 4_250_000,
        sillUm: 900_000,
        widthUm: 1_000_000,
        heightUm: 1_000_000,
      },
    ]);
  });

  it("comes to nothing where nothing moves", () => {
    expect(moveElement(scheme, "f1", "south", at(0, 0, 4000), at(2, 0, 4000), 100)).toEqual([]);
  });
});

describe("stepElement(scheme, id, side, steps)", () => {
  it("goes right as the eye of the elevation has it", () => {
    const east = stepElement(scheme, "f1", "south", { rightMm: 10, upMm: 0 });
    const west = stepElement(scheme, "f1", "north", { rightMm: 10, upMm: 0 });
    const north = stepElement(scheme, "f1", "east", { rightMm: 10, upMm: 0 });
    expect([unitAfter(east, "f1")?.xUm, unitAfter(west, "f1")?.xUm, unitAfter(north, "f1")?.yUm]).toEqual([
      10_000, -10_000, 10_000,
    ]);
  });

  it("an opening seen from the other side goes the other way along its wall", () => {
    const seen = stepElement(scheme, "o1", "south", { rightMm: 10, upMm: 5 });
    const behind = stepElement(scheme, "o1", "north", { rightMm: 10, upMm: 0 });
    expect(seen).toMatchObject([{ offsetUm: 4_010_000, sillUm: 1_005_000 }]);
    expect(behind).toMatchObject([{ offsetUm: 3_990_000 }]);
  });
});
