import type { CheckResult, Scheme, StrengthReport } from "@cornerway/schema";

/** The governing checks that concern an element, the fullest first: its own, or those of the unit an opening is cut in. */
export function ownChecks(report: StrengthReport, scheme: Scheme, elementId: string): CheckResult[] {
  const holder = scheme.openings.find(({ id }) => id === elementId)?.containerId ?? elementId;
  const own = report.results.filter(({ ownerId }) => ownerId === elementId);
  return own.length > 0 ? own : report.results.filter(({ ownerId }) => ownerId === holder);
}

/** "0.83"; what cannot be stated says so. */
export const usedText = ({ utilisation }: Pick<CheckResult, "utilisation">): string =>
  utilisation === null ? "not stated" : utilisation.toFixed(2);

/** What one check says by itself: look.md section 9 lets a check say "Works" or "Does not work". */
export function checkWord({ utilisation, coverage, held, envelope }: CheckResult): string {
  if (utilisation === null) return "Needs the engineer";
  if (held.length > 0) return utilisation <= 1 ? "Works once held" : "Over once held";
  if (utilisation <= 1) return "Works";
  if (coverage !== "checked") return "Beyond its bound";
  const least = Math.min(...envelope.map(({ utilisation: use }) => use ?? Infinity));
  return least <= 1 ? "An assumption decides" : "Does not work";
}
