import { describe, expect, it } from "vitest";
import { elementOrder, nextElement } from "../../src/hand/element-order.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const opening = (id: string, tag: string, containerId: string) => ({
  id,
  tag,
  containerId,
  face: "right" as const,
  use: "door" as const,
  offsetUm: 0,
  sillUm: 0,
  widthUm: 1_000_000,
  heightUm: 2_000_000,
  framed: true,
});

const scheme = {
  ...schemeOf([unitAt("a", "G10", 0, 0, 0), unitAt("b", "G2", 0, 5000, 0)]),
  openings: [opening("x", "D1", "a"), opening("y", "D2", "b")],
};

describe("elementOrder(scheme)", () => {
  it("goes from unit to unit by label, each with what is cut in it", () => {
    expect(elementOrder(scheme)).toEqual(["b", "y", "a", "x"]);
  });

  it("nextElement goes round in both ways, and begins at an end where nothing is chosen", () => {
    expect([nextElement(scheme, "x", 1), nextElement(scheme, "b", -1)]).toEqual(["b", "x"]);
    expect([nextElement(scheme, null, 1), nextElement(scheme, null, -1)]).toEqual(["b", "x"]);
    expect(nextElement(schemeOf([]), null, 1)).toBeNull();
  });
});
