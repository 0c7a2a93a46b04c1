import * as axe from "@axe-core/playwright";
import type { Page } from "playwright-core";

/** Serious and critical findings of axe on the page as it is, each with the first place it was found. */
export async function seriousFindings(page: Page): Promise<string[]> {
  const { violations } = await new axe.AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""} (${nodes.length} places)`);
}
