import type { Verdict } from "@cornerway/schema";

/** Class that sets the current colour to a verdict's. */
export const verdictClass = (verdict: Verdict): string => `verdict-${verdict.replaceAll(" ", "-")}`;

/** The verdict as a heading says it. */
export const verdictWords = (verdict: Verdict): string => verdict.charAt(0).toUpperCase() + verdict.slice(1);
