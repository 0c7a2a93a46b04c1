import { describe, expect, it } from "vitest";
import { canonicalJson } from "@cornerway/schema";
import { openWorking } from "../../src/working/open-working.ts";
import { parseExpression } from "../../src/working/parse-expression.ts";
import { substituteExpression } from "../../src/working/substitute-expression.ts";
import { evaluateExpression } from "../../src/working/evaluate-expression.ts";
import type { Clause } from "../../src/working/working.ts";

const clause: Clause = { document: "AISC 360", edition: "2016", place: "E3", certainty: "memory" };

const euler = () => {
  const working = openWorking("Elastic buckling", clause);
  working.let("E", 200000, "MPa", "modulus of elasticity", "published");
  working.let("L_c", 3000, "mm", "effective length", "derived");
  working.let("r", 30, "mm", "radius of gyration", "derived", "section table");
  return working;
};

describe("openWorking", () => {
  it("compute gives π²E/(L/r)² = 197.392 MPa for E 200 000 and L/r 100 (hand: 9.869604 × 20)", () => {
    expect(euler().compute("F_e", "π^2*E/(L_c/r)^2", "MPa")).toBeCloseTo(197.39208802, 6);
  });

  it("a step holds its formula, the numbers put in, the result and the unit", () => {
    const working = euler();
    working.compute("F_e", "π^2*E/(L_c/r)^2", "MPa", "Eq. E3-4");
    expect(working.giving("F_e").steps).toEqual([
      {
        kind: "value",
        symbol: "F_e",
        formula: "π^2*E/(L_c/r)^2",
        substituted: "π^2 * 200000 / (3000 / 30)^2",
        result: (Math.PI * Math.PI * 200000) / 10000,
        unit: "MPa",
        place: "Eq. E3-4",
      },
    ]);
  });

  it("when records the condition with both sides and whether it holds", () => {
    const working = euler();
    expect(working.when("L_c/r", "<=", "200")).toBe(true);
    expect(working.giving("r").steps[0]).toMatchObject({ leftValue: 100, rightValue: 200, holds: true });
  });

  it("a finished working is no more certain than its weakest value", () => {
    const working = euler();
    expect(working.giving("r").certainty).toBe("memory");
    working.let("c", 1, "1", "guess", "common practice");
    expect(working.giving("r").certainty).toBe("common practice");
  });

  it("against states the utilisation as demand over limit", () => {
    const working = euler();
    working.let("d", 45, "mm", "limit", "derived");
    expect(working.against("r", "d").utilisation).toBeCloseTo(30 / 45, 12);
  });

  it("take brings in the result of another working and keeps that working as a part", () => {
    const part = euler().giving("r");
    const whole = openWorking("Whole", { ...clause, certainty: "published" });
    expect(whole.take("r_x", part)).toBe(30);
    expect(whole.giving("r_x").parts).toEqual([part]);
    expect(whole.giving("r_x").certainty).toBe("memory");
  });

  it("has a canonical JSON form", () => {
    const working = euler();
    working.compute("F_e", "π^2*E/(L_c/r)^2", "MPa");
    const finished = working.against("F_e", "E");
    expect(JSON.parse(canonicalJson(finished))).toEqual(finished);
  });

  it.each([
    ["an unknown symbol", () => euler().compute("x", "E*nothing", "MPa")],
    ["a symbol named twice", () => euler().let("E", 1, "MPa", "again", "derived")],
    ["a division by zero", () => euler().compute("x", "E/(r-r)", "MPa")],
    ["a limit in another unit", () => euler().against("E", "r")],
  ])("throws for %s", (_, misuse) => {
    expect(misuse).toThrow(RangeError);
  });
});

describe("parseExpression", () => {
  const value = (formula: string, symbols: Record<string, number> = {}) =>
    evaluateExpression(parseExpression(formula), (name) => symbols[name] ?? Number.NaN);

  it.each([
    ["2+3*4", 14],
    ["(2+3)*4", 20],
    ["2^3^2", 512],
    ["-2^2", -4],
    ["8/4/2", 1],
    ["8-4-2", 2],
    ["2*-3", -6],
    ["sqrt(16)+cbrt(27)", 7],
    ["min(3, 1, 2)*max(4, 5)", 5],
    ["1.5e3", 1500],
    ["2^-1", 0.5],
  ])("reads %s as %d", (formula, expected) => {
    expect(value(formula)).toBeCloseTo(expected, 12);
  });

  it.each(["2+", "(2", "f(2)", "2 $ 3", "2 3", ")"])("refuses %s", (formula) => {
    expect(() => parseExpression(formula)).toThrow(SyntaxError);
  });
});

describe("substituteExpression", () => {
  const symbols: Record<string, number> = { a: -2, b: 3.14159265, c: 4, d: 1e-9 };
  const valueOf = (name: string) => symbols[name] ?? Number.NaN;

  it.each([
    ["a^2", "(-2)^2"],
    ["c-(a+b)", "4 - ((-2) + 3.1416)"],
    ["c/(c*b)", "4 / (4 * 3.1416)"],
    ["c*d", "4 * (1e-9)"],
    ["-(b+c)", "-(3.1416 + 4)"],
    ["(c^2)^b", "(4^2)^3.1416"],
  ])("writes %s as %s", (formula, written) => {
    expect(substituteExpression(parseExpression(formula), valueOf)).toBe(written);
  });

  it("what it writes reads back to the same value, within the rounding to five figures", () => {
    for (const formula of ["a^2*b-c/(b-a)", "-(a+b)^2/c", "c/(a/b)", "c-(b-a)", "2^-c"]) {
      const exact = evaluateExpression(parseExpression(formula), valueOf);
      const read = evaluateExpression(
        parseExpression(substituteExpression(parseExpression(formula), valueOf)),
        valueOf,
      );
      expect(Math.abs(read / exact - 1)).toBeLessThan(1e-4);
    }
  });
});
