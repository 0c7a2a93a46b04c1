import { corrugatedSheet, folds } from "../catalog/sections/corrugated-sheet.ts";
import { steels } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { Unit } from "../geometry/building.ts";
import type { UnitFragment } from "../model/building-model.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import { forcePart } from "./force-part.ts";
import type { StrengthPart } from "./strength-part.ts";

/** Doors welded shut, against the code's table at allowable level; nothing where they open. */
export function doorParts(unit: Unit, { panels }: UnitFragment, lines: UnitLines, basis: CheckBasis): StrengthPart[] {
  const ids = panels.map(({ id }) => id).filter((id) => id.startsWith("doors#"));
  if (ids.length === 0) return [];
  const { id: ownerId, container } = unit;
  const wall = (forceN: number): readonly Check[] => {
    const { check } = basis.wall({
      table: { type: container.type, wall: "end" },
      facts: {
        lengthMm: lines.widthMm,
        openingsMm: 0,
        piecesMm: [lines.widthMm],
        boundaryOnFourSides: true,
        openingsFramed: true,
        smallHolesWithinLimit: true,
        kind: "door end",
        doorsWeldedShut: true,
      },
      forceN,
      panel: {
        sheet: corrugatedSheet(folds.end, 2),
        steel: steels.unproved,
        heightMm: lines.topRailMm - lines.bottomRailMm,
      },
    });
    return check === undefined ? [] : [check];
  };
  return [
    forcePart(
      { ownerId, element: "end sheet", place: "doors welded shut", level: "allowable" },
      (solved) => {
        const { values, panelAt } = solved.inner(ownerId);
        const flow = ids.reduce((sum, id) => sum + (values[panelAt(id)] ?? 0), 0) / ids.length;
        return Math.abs(flow) * lines.widthMm;
      },
      wall,
    ),
  ];
}
