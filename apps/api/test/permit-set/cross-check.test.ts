import { describe, expect, it } from "vitest";
import { disagreements, disagreementText } from "../../src/permit-set/cross-check.ts";
import type { Figure } from "../../src/permit-set/figure.ts";

const told = (from: Figure["from"], value: number, page: string): Figure => ({
  ...{ about: "D3", quantity: "opening width", from, value, page },
});

describe("disagreements(figures)", () => {
  it("finds nothing where drawing and schedule tell a width alike, to half a millimetre", () => {
    expect(disagreements([told("drawing", 1900.4, "S5.1"), told("schedule", 1900, "S6.1")])).toEqual([]);
  });

  it("names the number, both pages and what each says where they do not", () => {
    const found = disagreements([told("drawing", 1900, "S5.1"), told("schedule", 1850, "S6.1")]);
    expect(found.map(disagreementText)).toEqual(["D3, opening width: drawing S5.1 says 1900; schedule S6.1 says 1850"]);
  });

  it("misses a width that is scheduled and not drawn", () => {
    expect(disagreements([told("schedule", 1900, "S6.1")])).toHaveLength(1);
  });

  it("holds forces to half a tenth of a kilonewton", () => {
    const force = (from: Figure["from"], value: number): Figure => ({
      ...{ about: "B1", quantity: "reaction, kN", from, value, page: "S7" },
    });
    expect(disagreements([force("drawing", 144.1), force("calculation", 144.14)])).toEqual([]);
    expect(disagreements([force("drawing", 144.1), force("calculation", 144.2)])).toHaveLength(1);
  });
});
