import { unitSystems } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { printQuantity, unitOf } from "../../src/units/quantity.ts";
import { readQuantity } from "../../src/units/read-typed.ts";
import { quantities, type Quantity } from "../../src/units/unit-scales.ts";

const value = (quantity: Quantity, text: string, units: "SI" | "US" = "SI") => {
  const read = readQuantity(quantity, text, units);
  return read.ok ? read.value : read.why;
};

describe("readQuantity", () => {
  // By hand from exact definitions, 1 lbf = 4.4482216152605 N and 1 ft = 0.3048 m:
  // 1 kip = 4,448.22 N; 1 kip/ft = 4,448.2216 / 0.3048 = 14,593.90 N/m; 1 psf = 4.4482216 / 0.09290304 = 47.880 Pa;
  // 1 ksf = 47,880.26 Pa; 1 lb = 453.59237 g.
  it.each<[Quantity, string, number]>([
    ["force", "1 kip", 4448],
    ["force", "10 kips", 44_482],
    ["force", "1,000 lb", 4448],
    ["force", "12,5 kN", 12_500],
    ["force", "-2 kN", -2000],
    ["line load", "1 kip/ft", 14_594],
    ["line load", "1 klf", 14_594],
    ["line load", "100 plf", 1459],
    ["line load", "1.2 kN/m", 1200],
    ["pressure", "50 psf", 2394],
    ["pressure", "1 ksf", 47_880],
    ["pressure", "2,400 Pa", 2400],
    ["pressure", "2,4 kPa", 2400],
    ["mass", "1 lb", 454],
    ["mass", "1,234 kg", 1_234_000],
    ["mass", "0.9 t", 900_000],
    ["angle", "12,5°", 12_500],
    ["angle", "-90", 270_000],
    ["angle", "360 deg", 0],
  ])("takes a %s of %s as %d whatever the reader's units", (quantity, text, expected) => {
    for (const units of unitSystems) expect(value(quantity, text, units)).toBe(expected);
  });

  it("takes a bare number in the unit beside the field", () => {
    expect([value("pressure", "2.4"), value("pressure", "50", "US")]).toEqual([2400, 2394]);
    expect([value("force", "1"), value("force", "1", "US")]).toEqual([1000, 4448]);
    expect([unitOf("pressure", "US"), unitOf("force", "US"), unitOf("line load", "US"), unitOf("mass", "US")]).toEqual([
      ...["psf", "kip", "kip/ft", "lb"],
    ]);
  });

  it.each<[Quantity, string]>([
    ["force", "12 m"],
    ["pressure", "-1"],
    ["pressure", "2 kN"],
    ["mass", "-3 kg"],
    ["angle", "north"],
    ["line load", ""],
  ])("refuses a %s of %j and says what is wrong", (quantity, text) => {
    for (const units of unitSystems) expect(value(quantity, text, units)).toMatch(/^An? .*(such as|below nothing)/);
  });

  it("what is printed is read back as what prints the same, in every quantity and both systems", () => {
    const any = fc.record({
      quantity: fc.constantFrom(...quantities),
      units: fc.constantFrom(...unitSystems),
      stored: fc.integer({ min: 0, max: 99_000_000 }),
    });
    fc.assert(
      fc.property(any, ({ quantity, units, stored }) => {
        const whole = quantity === "angle" ? stored % 360_000 : stored;
        const printed = printQuantity(quantity, whole, units);
        const read = readQuantity(quantity, printed, units);
        expect(read.ok && printQuantity(quantity, read.value, units)).toBe(printed);
      }),
      { numRuns: 2000 },
    );
  });
});
