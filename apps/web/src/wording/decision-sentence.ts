import type { Decision } from "@cornerway/schema";
import { moneyText } from "./money.ts";

/** What the owner decided, in one sentence; the reason follows in their own words. */
export function decisionSentence({ decision, revision, requestId, money, currency, reason }: Decision): string {
  const subject = requestId === null ? `revision ${revision}` : `a change asked for on revision ${revision}`;
  const did = decision === "agree" ? "agreed to" : "declined";
  return `The owner ${did} ${moneyText(money, currency)} for ${subject}${reason === null ? "." : `: ${reason}`}`;
}
