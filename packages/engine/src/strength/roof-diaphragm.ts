import { folds } from "../catalog/sections/corrugated-sheet.ts";
import type { UnitFragment } from "../model/building-model.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import type { SheetPiece } from "./sheet-part.ts";
import type { SheetStrip } from "./strip-flows.ts";

/** Of the roof sheet, mm; common practice, no published source. */
const ROOF_MM = 2;

/**
 * The roof as a diaphragm: its sheet in shear from side rail to side rail, bay by bay. Its chords and collectors are the rails,
 * headers and posts round it, which the model presses, pulls and bends with it.
 */
export function roofDiaphragm({ panels, nodes }: UnitFragment, { widthMm }: UnitLines): Omit<SheetPiece, "ownerId">[] {
  const places = new Map(nodes.map((node) => [node.id, node.x]));
  const strips = panels
    .filter(({ id }) => id.startsWith("roof#"))
    .map(({ id, nodes: [from, to] }) => {
      const [x0, x1] = [places.get(from), places.get(to)];
      if (x0 === undefined || x1 === undefined) throw new RangeError(`panel ${id} has no corners`);
      const strip: SheetStrip = { widthMm: Math.abs(x1 - x0), panels: [{ id, heightMm: widthMm }] };
      return { x: Math.min(x0, x1), strip };
    })
    .toSorted((a, b) => a.x - b.x)
    .map(({ strip }) => strip);
  if (strips.length === 0) return [];
  return [
    {
      element: "roof sheet",
      place: "as a diaphragm",
      fold: folds.roof,
      thicknessMm: ROOF_MM,
      heightMm: widthMm,
      strips,
    },
  ];
}
