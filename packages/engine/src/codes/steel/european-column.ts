import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";

/** Imperfection factors α of the buckling curves (EN 1993-1-1 Table 6.1). From memory. */
export const bucklingCurves = { a0: 0.13, a: 0.21, b: 0.34, c: 0.49, d: 0.76 } as const;
export type BucklingCurve = keyof typeof bucklingCurves;

/** Column for EN 1993-1-1 6.3.1: mm, mm², MPa. `modulusMpa` 210 000 in that code. */
export type EuropeanColumn = {
  readonly curve: BucklingCurve;
  readonly areaMm2: number;
  readonly radiusMm: number;
  readonly lengthMm: number;
  readonly yieldMpa: number;
  readonly modulusMpa: number;
};

/** Buckling resistance N_b,Rd for a class 1 to 3 section, γ_M1 = 1, N (EN 1993-1-1 6.3.1). For comparison only. */
export function europeanColumn(column: EuropeanColumn): Working {
  const clause = { document: "EN 1993-1-1", edition: "2005", place: "6.3.1", certainty: "memory" } as const;
  const working = openWorking("Buckling resistance, European column curves", clause);
  working.let("A", column.areaMm2, "mm²", "area", "derived");
  working.let("i", column.radiusMm, "mm", "radius of gyration", "derived");
  working.let("L_cr", column.lengthMm, "mm", "buckling length", "derived");
  working.let("f_y", column.yieldMpa, "MPa", "yield stress", "derived");
  working.let("E", column.modulusMpa, "MPa", "modulus of elasticity", "memory");
  working.let("α", bucklingCurves[column.curve], "1", `imperfection factor, curve ${column.curve}`, "memory");
  working.compute("λ", "L_cr/(i*π*sqrt(E/f_y))", "1", "Eq. 6.50");
  working.compute("Φ", "0.5*(1 + α*(λ - 0.2) + λ^2)", "1", "6.3.1.2");
  working.compute("χ", "min(1, 1/(Φ + sqrt(max(0, Φ^2 - λ^2))))", "1", "Eq. 6.49");
  working.compute("N_b", "χ*A*f_y", "N", "Eq. 6.47");
  return working.giving("N_b");
}
