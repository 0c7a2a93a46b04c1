import type { ModelPanel } from "./analytical-model.ts";
import type { SheetStiffness, UnitLines } from "./unit-lines.ts";

/** Which sheet of its container a panel is a piece of; in layers it needs its stiffness along the wall. */
export interface DrawnSheet {
  readonly of: "sides" | "front" | "doors" | "floor" | "roof";
  readonly layered: boolean;
}

/** A piece of sheet with the stiffness it has in these lines. */
export function panelOf(
  { id, nodes }: Pick<ModelPanel, "id" | "nodes">,
  sheet: DrawnSheet,
  lines: UnitLines,
): ModelPanel {
  const { shear, upright, along } = stiffnessOf(sheet, lines);
  return {
    id,
    nodes,
    Gt: shear,
    ...(upright > 0 && { Ev: upright }),
    ...(sheet.layered && along > 0 && { Eh: along }),
  };
}

function stiffnessOf({ of }: DrawnSheet, lines: UnitLines): SheetStiffness {
  switch (of) {
    case "sides":
      return lines.sideSheet;
    case "front":
      return lines.frontSheet;
    case "doors":
      return lines.doors ?? CARRIES_NOTHING;
    case "floor":
      return { shear: lines.floorShear, upright: 0, along: 0 };
    case "roof":
      return { shear: lines.roofShear, upright: lines.roofAcross, along: 0 };
  }
}

const CARRIES_NOTHING: SheetStiffness = { shear: 0, upright: 0, along: 0 };
