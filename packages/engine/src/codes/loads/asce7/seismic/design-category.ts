import type { RiskCategory } from "../../../../loads/site-hazards.ts";
import type { SeismicCategory } from "../../../../loads/seismic-site.ts";

/** Seismic design category, 11.6 with Tables 11.6-1 and 11.6-2, from memory: the more severe of the two. */
export function designCategory(
  { sds, sd1, ss, s1 }: { sds: number; sd1: number; ss: number; s1: number },
  riskCategory: RiskCategory,
): SeismicCategory {
  if (ss <= 0.15 && s1 <= 0.04) return "A";
  if (s1 >= 0.75) return riskCategory === "IV" ? "F" : "E";
  const column = riskCategory === "IV" ? 1 : 0;
  const place = Math.max(rowOf(sds, [0.167, 0.33, 0.5]), rowOf(sd1, [0.067, 0.133, 0.2]));
  return categories[column][place] ?? "D";
}

const categories: readonly [readonly SeismicCategory[], readonly SeismicCategory[]] = [
  ["A", "B", "C", "D"],
  ["A", "C", "D", "D"],
];

const rowOf = (value: number, limits: readonly number[]): number => limits.filter((limit) => value >= limit).length;
