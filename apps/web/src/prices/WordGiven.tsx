import type { DecisionShown } from "@cornerway/schema";
import { dayOf } from "../controls/calendar.ts";
import { moneyText } from "../wording/money.ts";

/** What the owner said of a price, when, and whether it still stands. */
export function WordGiven({ shown: { decision, stale } }: { shown: DecisionShown }) {
  const { money, currency, author, decidedAt, reason } = decision;
  const did = decision.decision === "agree" ? "agreed to" : "declined";
  return (
    <p className="price-small">
      {author.name} {did} {moneyText(money, currency)} on {dayOf(decidedAt)}.
      {reason === null ? null : <em className="hand-owner"> {reason}</em>}
      {stale.length === 0 ? null : <b> It stands no more: {staleWords(stale)}.</b>}
    </p>
  );
}

const staleWords = (stale: DecisionShown["stale"]): string =>
  stale
    .map((reason) => (reason === "content" ? "what is drawn has changed since" : "the cost book has changed since"))
    .join(", and ");
