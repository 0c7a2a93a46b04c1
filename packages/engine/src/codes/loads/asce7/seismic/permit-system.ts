import type { SeismicCategory } from "../../../../loads/seismic-site.ts";
import type { SeismicSystem, SystemPermit } from "../../../../loads/seismic-system.ts";
import type { Asce7Edition } from "../asce7-edition.ts";
import { systemRows } from "./system-rows.ts";

/** Whether a system may stand in a design category at a structural height, with the line of the table that says so. */
export function permitSystem(
  edition: Asce7Edition,
  system: SeismicSystem,
  category: SeismicCategory,
  heightMm: number,
): SystemPermit {
  const row = systemRows(edition).find((candidate) => candidate.system === system);
  if (row === undefined) throw new RangeError(`no row for ${system}`);
  const { clause } = row;
  if (category === "A") return { permitted: true, row, clause };
  const limit = row.limits[category];
  const refused = { permitted: false, row, clause, category, heightMm, limit } as const;
  if (limit === "not permitted") return { ...refused, why: "not permitted in this category" };
  if (limit !== "not limited" && heightMm > limit + nominalMm) return { ...refused, why: "too high for this category" };
  return { permitted: true, row, clause };
}

/** Heights are limited in half feet and units measured in millimetres: a 9 ft 6 in unit is 2896 mm, 9.5 ft 2895.6. */
const nominalMm = 0.5;
