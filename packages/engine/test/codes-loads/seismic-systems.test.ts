import { describe, expect, it } from "vitest";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import type { SeismicSystem } from "../../src/loads/seismic-system.ts";

const ft = 304.8;
const of = (edition: "IBC 2021" | "IBC 2024") => designBasisFor(edition).seismic;

// Published check values 4.4 for the sheet walls, ASCE 7 Table 12.2-1 from memory for the rest: R, Ω0, Cd.
const factors: readonly (readonly [SeismicSystem, number, number, number])[] = [
  ["special moment frames", 8, 3, 5.5],
  ["intermediate moment frames", 4.5, 3, 4],
  ["ordinary moment frames", 3.5, 3, 3],
  ["special concentric braces", 6, 2, 5],
  ["ordinary concentric braces", 3.25, 2, 3.25],
  ["special plate walls", 7, 2, 6],
  ["special cantilever columns", 2.5, 1.25, 2.5],
  ["ordinary cantilever columns", 1.25, 1.25, 1.25],
];

// Permitted at 9 ft and at 36 ft, in categories B C D E F: y yes, h not at 36 ft, n not at all.
const truth: readonly (readonly ["IBC 2021" | "IBC 2024", SeismicSystem, string])[] = [
  ["IBC 2021", "container sheet walls", "yyhnn"],
  ["IBC 2024", "container sheet walls", "yynnn"],
  ...(["IBC 2021", "IBC 2024"] as const).flatMap((edition) =>
    (
      [
        ["special moment frames", "yyyyy"],
        ["intermediate moment frames", "yyhnn"],
        ["ordinary moment frames", "yynnn"],
        ["special concentric braces", "yyyyy"],
        ["ordinary concentric braces", "yyhhn"],
        ["special plate walls", "yyyyy"],
        ["special cantilever columns", "hhhhh"],
        ["ordinary cantilever columns", "hhnnn"],
      ] as const
    ).map(([system, row]) => [edition, system, row] as const),
  ),
];

// Published check values 4.3, from memory of the building code: one unit up to 9.5 ft, categories A to D; R 2, Ω0 2.5, C_d 2.
describe("the simplified path for a single unit", () => {
  it("is open up to 9.5 ft in B to D and shut in E and F, by the building code's own clause", () => {
    const at = (category: "B" | "C" | "D" | "E" | "F", heightMm: number) =>
      of("IBC 2021").permit("single unit by the simplified path", category, heightMm);
    expect((["B", "C", "D", "E", "F"] as const).map((category) => at(category, 2895.6).permitted)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(at("D", 2591).row).toMatchObject({
      r: 2,
      omega0: 2.5,
      cd: 2,
      clause: { document: "IBC", place: "3115.8.5.1" },
    });
    expect(at("B", 5182)).toMatchObject({ permitted: false, why: "too high for this category" });
  });

  // 9.5 ft is 2895.6 mm, a high-cube is 2896 mm (9 ft 6 in nominal): the limit means it.
  it("does not shut out a high-cube for four tenths of a millimetre", () => {
    expect(of("IBC 2021").permit("single unit by the simplified path", "B", 2896).permitted).toBe(true);
  });
});

describe("permitted systems", () => {
  it.each(truth)("of %s: %s in B C D E F are %s", (edition, system, row) => {
    const letters = (["B", "C", "D", "E", "F"] as const).map((category) => {
      if (of(edition).permit(system, category, 36 * ft).permitted) return "y";
      return of(edition).permit(system, category, 9 * ft).permitted ? "h" : "n";
    });
    expect(letters.join("")).toBe(row);
  });

  it("of category A are all of them", () => {
    expect(truth.every(([edition, system]) => of(edition).permit(system, "A", 100 * ft).permitted)).toBe(true);
  });

  it.each(factors)("take R, Ω0 and C_d of %s from the table", (system, r, omega0, cd) => {
    expect(of("IBC 2021").permit(system, "B", 3000).row).toMatchObject({ r, omega0, cd });
  });

  it("take sheet walls as light-frame walls (2, 2.5, 2) in the earlier edition, as steel not detailed (3, 3, 3) in the later", () => {
    expect(of("IBC 2021").permit("container sheet walls", "B", 3000).row).toMatchObject({ r: 2, omega0: 2.5, cd: 2 });
    expect(of("IBC 2024").permit("container sheet walls", "B", 3000).row).toMatchObject({ r: 3, omega0: 3, cd: 3 });
  });

  it("are refused with the table's line, the category and the limit", () => {
    expect(of("IBC 2024").permit("container sheet walls", "D", 2896)).toMatchObject({
      permitted: false,
      why: "not permitted in this category",
      category: "D",
      clause: { document: "ASCE 7", edition: "2022", place: "Table 12.2-1 H", certainty: "memory" },
    });
    expect(of("IBC 2021").permit("container sheet walls", "D", 36 * ft)).toMatchObject({
      permitted: false,
      why: "too high for this category",
      limit: 35 * ft,
    });
  });
});
