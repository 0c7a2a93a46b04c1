import type { Irregularity } from "../../../../loads/irregularity.ts";
import type { Redundancy } from "../../../../loads/redundancy.ts";
import type { SeismicCategory } from "../../../../loads/seismic-site.ts";
import type { LateralLine, SeismicStorey } from "../../../../loads/seismic-storey.ts";
import type { Axis } from "../../../../loads/wind-shape.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/**
 * Redundancy, 12.3.4: 1.0 up to category C; in D to F 1.3 unless the building is regular in plan with two bays of walls
 * on each side of the centre of mass, each way, in every storey (12.3.4.2 b, tried in every storey whatever its share
 * of the shear). The other way out, removing one element after the other (12.3.4.2 a), is not tried.
 */
export function redundancy(
  edition: Asce7Edition,
  category: SeismicCategory,
  storeys: readonly SeismicStorey[],
  irregularities: readonly Irregularity[],
): Redundancy {
  const low = category === "A" || category === "B" || category === "C";
  const regular = !irregularities.some(({ kind }) => horizontal.includes(kind));
  const bays = storeys.length > 0 && storeys.every((storey) => axes.every((axis) => twoBaysEachSide(storey, axis)));
  return {
    factor: low || (regular && bays) ? 1 : 1.3,
    conditions: [
      { code: "category B or C", holds: low },
      { code: "regular in plan", holds: regular },
      { code: "two bays on each side of the centre of mass", holds: bays },
    ],
    clause: asce7(edition, "12.3.4"),
  };
}

const axes: readonly Axis[] = ["x", "y"];
const horizontal: readonly Irregularity["kind"][] = [
  "torsional",
  "extreme torsional",
  "re-entrant corner",
  "diaphragm hole",
  "out-of-plane offset",
  "lines not parallel",
];

function twoBaysEachSide(storey: SeismicStorey, axis: Axis): boolean {
  const centre = axis === "x" ? storey.centreYMm : storey.centreXMm;
  const baysWhere = (side: (line: LateralLine) => boolean) =>
    storey.lines
      .filter((line) => line.axis === axis && side(line))
      .reduce((sum, line) => sum + line.lengthMm / line.heightMm, 0);
  return baysWhere(({ atMm }) => atMm > centre) >= 2 && baysWhere(({ atMm }) => atMm < centre) >= 2;
}
