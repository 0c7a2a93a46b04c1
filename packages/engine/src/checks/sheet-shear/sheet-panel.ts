import { poissonRatio, type Steel } from "../../catalog/materials.ts";
import type { CorrugatedSheet } from "../../catalog/sections/corrugated-sheet.ts";
import type { OpenWorking } from "../../working/open-working.ts";
import { letYield } from "../../codes/steel/steel-basis.ts";
import { foldStiffness } from "./fold-stiffness.ts";

/** A corrugated panel in shear; `heightMm` runs along the folds, between rails. `modulusMpa` is the code's. */
export type SheetPanel = {
  readonly sheet: CorrugatedSheet;
  readonly steel: Steel;
  readonly heightMm: number;
  readonly modulusMpa: number;
};

/** Records E, f_y, t, a, h, D_x, D_z and the yield stress in shear τ_y. */
export function letPanel(working: OpenWorking, panel: SheetPanel): void {
  const { sheet } = panel;
  const stiffness = foldStiffness(sheet, panel.modulusMpa, poissonRatio.value);
  working.let("E", panel.modulusMpa, "MPa", "modulus of elasticity", "memory");
  letYield(working, panel.steel);
  working.let("t", sheet.thicknessMm, "mm", "sheet", "common practice", "generic purchase specifications");
  working.let("a", sheet.widestFoldMm, "mm", "widest fold", "common practice", "generic purchase specifications");
  working.let("h", panel.heightMm, "mm", "height along the folds", "derived");
  working.let("D_x", stiffness.weakNmm, "N·mm", "bending stiffness across the folds, D w/s", "derived");
  working.let("D_z", stiffness.strongNmm, "N·mm", "bending stiffness along the folds, E I/w", "derived");
  working.compute("τ_y", "F_y/sqrt(3)", "MPa");
}
