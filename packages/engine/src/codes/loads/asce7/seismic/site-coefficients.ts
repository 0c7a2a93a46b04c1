import type { SiteClass } from "../../../../loads/site-hazards.ts";
import { interpolate, type Point } from "../../interpolate.ts";

/** ASCE 7-16 Tables 11.4-1 and 11.4-2, from memory. Undefined where the text asks for a site study. */
export function siteCoefficient(table: "Fa" | "Fv", siteClass: SiteClass, mapped: number): number | undefined {
  if (siteClass === "default") {
    const ofD = siteCoefficient(table, "D", mapped);
    return table === "Fa" && ofD !== undefined ? Math.max(ofD, 1.2) : ofD;
  }
  const points = tables[table][siteClass];
  return points === undefined ? undefined : interpolate(points, mapped);
}

type Rows = Readonly<Partial<Record<SiteClass, readonly Point[]>>>;

const tables: Readonly<Record<"Fa" | "Fv", Rows>> = {
  Fa: {
    A: [[0.25, 0.8]],
    B: [[0.25, 0.9]],
    C: [
      [0.25, 1.3],
      [0.5, 1.3],
      [0.75, 1.2],
    ],
    D: [
      [0.25, 1.6],
      [0.5, 1.4],
      [0.75, 1.2],
      [1, 1.1],
      [1.25, 1],
    ],
  },
  Fv: {
    A: [[0.1, 0.8]],
    B: [[0.1, 0.8]],
    C: [
      [0.5, 1.5],
      [0.6, 1.4],
    ],
    D: [
      [0.1, 2.4],
      [0.2, 2.2],
      [0.3, 2],
      [0.4, 1.9],
      [0.5, 1.8],
      [0.6, 1.7],
    ],
  },
};
