import type { SeismicSystem, SystemRow } from "../../../../loads/seismic-system.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/**
 * Table 12.2-1, from memory; heights in feet. What the sheet walls of a container count as is the building code's choice:
 * light-frame walls with panels of other materials under IBC 2021, steel not detailed for earthquakes under IBC 2024.
 */
export const systemRows = (edition: Asce7Edition): readonly SystemRow[] => [
  systemRow(sheetWalls[edition], asce7(edition, `Table 12.2-1 ${sheetWalls[edition][2]}`)),
  systemRow(simplifiedPath, {
    document: "IBC",
    edition: edition === "2016" ? "2021" : "2024",
    place: simplifiedPath[2],
    certainty: "memory",
  }),
  ...frames.map((entries) => systemRow(entries, asce7(edition, `Table 12.2-1 ${entries[2]}`))),
];

type Limit = "not limited" | "not permitted" | number;
type Entries = readonly [
  system: SeismicSystem,
  listedAs: string,
  place: string,
  factors: readonly [r: number, omega0: number, cd: number],
  limitsFt: readonly [b: Limit, c: Limit, d: Limit, e: Limit, f: Limit],
];

const NL = "not limited";
const NP = "not permitted";

// prettier-ignore
const sheetWalls: Readonly<Record<Asce7Edition, Entries>> = {
  "2016": ["container sheet walls", "light-frame walls with shear panels of all other materials", "A", [2, 2.5, 2], [NL, NL, 35, NP, NP]],
  "2022": ["container sheet walls", "steel systems not specifically detailed for seismic resistance", "H", [3, 3, 3], [NL, NL, NP, NP, NP]],
};

// prettier-ignore
const simplifiedPath: Entries =
  ["single unit by the simplified path", "single unit on the ground, uncut rails, posts and fittings", "3115.8.5.1", [2, 2.5, 2], [9.5, 9.5, 9.5, NP, NP]];

// prettier-ignore
const frames: readonly Entries[] = [
  ["special moment frames", "steel special moment frames", "C.1", [8, 3, 5.5], [NL, NL, NL, NL, NL]],
  ["intermediate moment frames", "steel intermediate moment frames", "C.3", [4.5, 3, 4], [NL, NL, 35, NP, NP]],
  ["ordinary moment frames", "steel ordinary moment frames", "C.4", [3.5, 3, 3], [NL, NL, NP, NP, NP]],
  ["special concentric braces", "steel special concentrically braced frames", "B.2", [6, 2, 5], [NL, NL, 160, 160, 100]],
  ["ordinary concentric braces", "steel ordinary concentrically braced frames", "B.3", [3.25, 2, 3.25], [NL, NL, 35, 35, NP]],
  ["special plate walls", "steel special plate shear walls", "B", [7, 2, 6], [NL, NL, 160, 160, 100]],
  ["special cantilever columns", "steel special cantilever column systems", "G.1", [2.5, 1.25, 2.5], [35, 35, 35, 35, 35]],
  ["ordinary cantilever columns", "steel ordinary cantilever column systems", "G.2", [1.25, 1.25, 1.25], [35, 35, NP, NP, NP]],
];

function systemRow(
  [system, listedAs, , [r, omega0, cd], [b, c, d, e, f]]: Entries,
  clause: SystemRow["clause"],
): SystemRow {
  const limits = { B: inMm(b), C: inMm(c), D: inMm(d), E: inMm(e), F: inMm(f) };
  return { system, listedAs, r, omega0, cd, limits, clause };
}

const inMm = (limit: Limit): Limit => (typeof limit === "number" ? limit * 304.8 : limit);
