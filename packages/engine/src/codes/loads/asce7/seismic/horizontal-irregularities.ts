import type { Irregularity, IrregularityConsequence, IrregularityKind } from "../../../../loads/irregularity.ts";
import type { SeismicCategory } from "../../../../loads/seismic-site.ts";
import type { SeismicStorey } from "../../../../loads/seismic-storey.ts";
import type { Axis } from "../../../../loads/wind-shape.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { torsionalRatio } from "./torsion.ts";

/** Table 12.3-1, from memory, on one storey. */
export function horizontalIrregularities(
  edition: Asce7Edition,
  category: SeismicCategory,
  storey: SeismicStorey,
): Irregularity[] {
  const found = (kind: IrregularityKind, value: number, limit: number, consequence: IrregularityConsequence) => ({
    kind,
    storeyId: storey.id,
    value,
    limit,
    consequence,
    clause: asce7(edition, `Table 12.3-1 ${typeOf[kind] ?? ""}`.trim()),
  });
  const { outline } = storey;
  const wide = { x: outline.x1Mm - outline.x0Mm, y: outline.y1Mm - outline.y0Mm };
  const reentrant = Math.min(storey.reentrantXMm / wide.x, storey.reentrantYMm / wide.y);
  const hole = storey.holesMm2 / storey.diaphragmMm2;
  return [
    ...axes.flatMap((axis) => torsional(edition, category, storey, axis)),
    ...(reentrant > 0.15 ? [found("re-entrant corner", reentrant, 0.15, "noted")] : []),
    ...(hole > holeLimit[edition] ? [found("diaphragm hole", hole, holeLimit[edition], "noted")] : []),
    ...offsetLines(storey).map(({ id, axis, value }) => ({
      ...found("out-of-plane offset", value, offsetTolerance, "overstrength below"),
      axis,
      lineId: id,
    })),
    ...(storey.skewedLines > 0 ? [found("lines not parallel", storey.skewedLines, 0, "noted")] : []),
  ];
}

const axes: readonly Axis[] = ["x", "y"];
const typeOf: Readonly<Partial<Record<IrregularityKind, string>>> = {
  "re-entrant corner": "2",
  "diaphragm hole": "3",
  "out-of-plane offset": "4",
  "lines not parallel": "5",
};
/** Half the enclosed area in 7-16; 7-22 lowered it to a quarter. From memory. */
const holeLimit: Readonly<Record<Asce7Edition, number>> = { "2016": 0.5, "2022": 0.25 };
/** Closer lines count as one: the thickness of a wall and its rail, common practice. */
const offsetTolerance = 150;

/** Not permitted as extreme in E and F (12.3.3.1). */
function torsional(
  edition: Asce7Edition,
  category: SeismicCategory,
  storey: SeismicStorey,
  axis: Axis,
): Irregularity[] {
  const ratio = torsionalRatio(storey, axis);
  if (ratio === undefined || ratio <= 1.2) return [];
  const extreme = ratio > 1.4;
  return [
    {
      kind: extreme ? "extreme torsional" : "torsional",
      storeyId: storey.id,
      axis,
      value: ratio,
      limit: extreme ? 1.4 : 1.2,
      consequence: extreme && (category === "E" || category === "F") ? "not permitted" : "noted",
      clause: asce7(edition, "Table 12.3-1 1"),
    },
  ];
}

const offsetLines = (storey: SeismicStorey) =>
  storey.lines.flatMap(({ id, axis, below }) => {
    if (below === undefined) return [{ id, axis, value: Infinity }];
    return below.kind === "line" && below.offsetMm > offsetTolerance ? [{ id, axis, value: below.offsetMm }] : [];
  });
