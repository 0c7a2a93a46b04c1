import type { DesignMethod, StrengthFactors } from "../../working/design-method.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Resistance } from "../../working/resistance.ts";
import { stateResistance } from "../../working/state-resistance.ts";
import { annexD } from "./annex-d.ts";
import { elasticGlobal } from "./elastic-global.ts";
import { bucklingInteraction } from "./interaction.ts";
import type { SheetPanel } from "./sheet-panel.ts";

/** Judgement: no American clause covers this sheet; the factors of member limit states stand in. */
const judgedFactors: StrengthFactors = { phi: 0.9, omega: 1.67, certainty: "common practice" };

const clause = {
  document: "rational analysis",
  edition: "none",
  place: "least of three published forms",
  certainty: "common practice",
} as const;

/** Shear flow of a whole corrugated panel between stiff members on all four sides, N/mm: the least of three forms. */
export function sheetShear(panel: SheetPanel, method: DesignMethod): Resistance {
  const working = openWorking("Sheet in shear", clause);
  working.take("v_1", annexD(panel));
  working.take("v_2", elasticGlobal(panel));
  working.take("v_3", bucklingInteraction(panel));
  working.compute("v_n", "min(v_1, v_2, v_3)", "N/mm");
  working.note("φ 0.90 and Ω 1.67 are judgement: no code clause covers this sheet.");
  working.note("Each form needs a boundary member on all four sides.");
  return stateResistance(working, "v_n", "N/mm", judgedFactors, method);
}
