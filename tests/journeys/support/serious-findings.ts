import * as axe from "@axe-core/playwright";
import type { Page } from "playwright-core";

/** Rules axe leaves out unless it is asked: WCAG 2.2, 2.5.8 (targets of 24 px or with room about them). */
const asked = { rules: { "target-size": { enabled: true } } };

/** Moderate to axe, and what a page of sheets is found by without seeing it. */
const ofLandmarks = new Set(["region", "landmark-unique"]);

/** Serious and critical findings of axe on the page as it is, and whatever stands outside its landmarks, each with the first place it was found. */
export async function seriousFindings(page: Page): Promise<string[]> {
  const { violations } = await new axe.AxeBuilder({ page }).options(asked).analyze();
  return violations
    .filter(({ impact, id }) => impact === "serious" || impact === "critical" || ofLandmarks.has(id))
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""} (${nodes.length} places)`);
}
