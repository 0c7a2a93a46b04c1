import { catalogAnswers } from "../../../packages/engine/test/codes-steel/support/catalog-answers.ts";
import { publishedSteel } from "../../../packages/engine/test/codes-steel/support/published-steel.ts";
import { sheetAnswers } from "../../../packages/engine/test/codes-steel/support/sheet-answers.ts";
import { steelAnswers } from "../../../packages/engine/test/codes-steel/support/steel-answers.ts";
import type { VerificationFamily } from "../verification-case.ts";

const answers: Readonly<Record<string, () => number>> = { ...catalogAnswers, ...steelAnswers, ...sheetAnswers };

/** Members, sheet, welds, bolts and catalogue rows against printed and hand-worked values. */
export const steel: VerificationFamily = {
  id: "steel",
  title: "Members, sheet, joints and catalogue",
  about:
    "Strengths of hot-rolled, hollow and pressed members, of corrugated sheet, welds and bolts, and sizes and section properties of the catalogue, each against a printed example or hand arithmetic from the clause named.",
  cases: publishedSteel.map(({ id, case: what, source, certainty, reference, unit, tolerance }) => ({
    ...{ id, what, source, certainty, reference, unit },
    allowed: { relative: tolerance },
    ours: () => answers[id]?.() ?? Number.NaN,
  })),
};
