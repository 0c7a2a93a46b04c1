import { steels, type Steel } from "../../../src/catalog/materials.ts";
import { corrugatedSheet, folds, type Fold } from "../../../src/catalog/sections/corrugated-sheet.ts";
import { annexD } from "../../../src/checks/sheet-shear/annex-d.ts";
import { elasticGlobal } from "../../../src/checks/sheet-shear/elastic-global.ts";
import { bucklingInteraction } from "../../../src/checks/sheet-shear/interaction.ts";
import type { SheetPanel } from "../../../src/checks/sheet-shear/sheet-panel.ts";
import { step } from "./steel-answers.ts";

const steel = (fyMpa: number): Steel => ({ ...steels.weathering, fyMpa });
const panel = (fold: Fold, t: number, heightMm: number, fyMpa: number): SheetPanel => ({
  sheet: corrugatedSheet(fold, t),
  steel: steel(fyMpa),
  heightMm,
  modulusMpa: 210_000,
});

const side16 = panel(folds.side, 1.6, 2350, 343);
const side20 = panel(folds.side, 2, 2350, 343);
/** Slope length 300 on a projection 300² − 150² = 259.81². */
const girder = panel({ outerFlatMm: 300, slopeMm: 200, innerFlatMm: 300, depthMm: 150 }, 3, 1500, 355);
const tested: Fold = { outerFlatMm: 140, slopeMm: 50, innerFlatMm: 140, depthMm: 50 };
const factor = (k: number) => ({ k, meaning: "as in the case", certainty: "memory" }) as const;
const annexDForceKn = (p: SheetPanel) => (annexD(p).result.value * p.heightMm) / 1e3;

/** Ours for each published case that concerns corrugated sheet, in the unit of the case. */
export const sheetAnswers: Readonly<Record<string, () => number>> = {
  "sheet-side-1.6-local": () => step(annexD(side16), "τ_l"),
  "sheet-side-1.6-global": () => step(annexD(side16), "τ_g"),
  "sheet-side-1.6-flow": () => annexD(side16).result.value,
  "sheet-side-2.0-local": () => step(annexD(side20), "τ_l"),
  "sheet-side-2.0-global": () => step(annexD(side20), "τ_g"),
  "sheet-side-2.0-flow": () => annexD(side20).result.value,
  "sheet-girder-local": () => step(annexD(girder), "τ_l"),
  "sheet-girder-global": () => step(annexD(girder), "τ_g"),
  "sheet-girder-force": () => annexDForceKn(girder),
  "sheet-easley-36": () => step(elasticGlobal(side16, factor(36)), "τ_g"),
  "sheet-easley-68.4": () => step(elasticGlobal(side16, factor(68.4)), "τ_g"),
  "sheet-interaction-1": () => step(bucklingInteraction(side16, factor(36)), "τ_i"),
  "sheet-test-L1A": () => annexDForceKn(panel(tested, 1.94, 994, 292)),
  "sheet-test-L1B": () => annexDForceKn(panel(tested, 2.59, 994, 335)),
  "sheet-test-L2A": () => annexDForceKn(panel(tested, 1.94, 1445, 282)),
};
