import type { SeismicSystem, SystemRow } from "../../../../loads/seismic-system.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/**
 * Table 12.2-1, from memory; heights in feet. What the sheet walls of a container count as is the building code's choice: light-frame
 * walls with panels of other materials under IBC 2021, steel not detailed for earthquakes under IBC 2024.
 */
export function systemRows(edition: Asce7Edition): readonly SystemRow[] {
  const row = (
    system: SeismicSystem,
    listedAs: string,
    place: string,
    factors: Factors,
    limits: Limits,
  ): SystemRow => ({
    system,
    listedAs,
    r: factors[0],
    omega0: factors[1],
    cd: factors[2],
    limits: { B: inMm(limits[0]), C: inMm(limits[1]), D: inMm(limits[2]), E: inMm(limits[3]), F: inMm(limits[4]) },
    clause: asce7(edition, `Table 12.2-1 ${place}`),
  });
  return [
    edition === "2016"
      ? row(
          "container sheet walls",
          "light-frame walls with shear panels of all other materials",
          "A",
          [2, 2.5, 2],
          [NL, NL, 35, NP, NP],
        )
      : row(
          "container sheet walls",
          "steel systems not specifically detailed for seismic resistance",
          "H",
          [3, 3, 3],
          [NL, NL, NP, NP, NP],
        ),
    {
      ...row(
        "single unit by the simplified path",
        "single unit on the ground, uncut rails, posts and fittings",
        "",
        [2, 2.5, 2],
        [9.5, 9.5, 9.5, NP, NP],
      ),
      clause: {
        document: "IBC",
        edition: edition === "2016" ? "2021" : "2024",
        place: "3115.8.5.1",
        certainty: "memory",
      },
    },
    row("special moment frames", "steel special moment frames", "C.1", [8, 3, 5.5], [NL, NL, NL, NL, NL]),
    row("intermediate moment frames", "steel intermediate moment frames", "C.3", [4.5, 3, 4], [NL, NL, 35, NP, NP]),
    row("ordinary moment frames", "steel ordinary moment frames", "C.4", [3.5, 3, 3], [NL, NL, NP, NP, NP]),
    row(
      "special concentric braces",
      "steel special concentrically braced frames",
      "B.2",
      [6, 2, 5],
      [NL, NL, 160, 160, 100],
    ),
    row(
      "ordinary concentric braces",
      "steel ordinary concentrically braced frames",
      "B.3",
      [3.25, 2, 3.25],
      [NL, NL, 35, 35, NP],
    ),
    row("special plate walls", "steel special plate shear walls", "B", [7, 2, 6], [NL, NL, 160, 160, 100]),
    row(
      "special cantilever columns",
      "steel special cantilever column systems",
      "G.1",
      [2.5, 1.25, 2.5],
      [35, 35, 35, 35, 35],
    ),
    row(
      "ordinary cantilever columns",
      "steel ordinary cantilever column systems",
      "G.2",
      [1.25, 1.25, 1.25],
      [35, 35, NP, NP, NP],
    ),
  ];
}

type Factors = readonly [r: number, omega0: number, cd: number];
type Entry = "not limited" | "not permitted" | number;
type Limits = readonly [Entry, Entry, Entry, Entry, Entry];

const NL = "not limited";
const NP = "not permitted";
const inMm = (entry: Entry): Entry => (typeof entry === "number" ? entry * 304.8 : entry);
