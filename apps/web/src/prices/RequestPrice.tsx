import type { ChangeRequest } from "@cornerway/schema";
import { lastWord, useDecisions } from "../data/decision.ts";
import { useRequestPremium } from "../data/premium.ts";
import { useRoom } from "../room/room-context.ts";
import { moneyText } from "../wording/money.ts";
import { DecisionForm } from "./DecisionForm.tsx";
import { ForShow } from "./ForShow.tsx";
import "./prices.css";

/** What a change request adds to the premium, and the owner's word on it; nothing for those who see no prices. */
export function RequestPrice({ request }: { request: ChangeRequest }) {
  const { project } = useRoom();
  const priced = useRequestPremium(project, request.id);
  const decisions = useDecisions(project);
  if (priced.data === undefined)
    return priced.isError ? <p className="field-fault">It cannot be priced now: {priced.error.message}</p> : null;
  const { revision, requestId, contentDigest, premiumDigest, costBook, currency, forShow } = priced.data;
  const money = priced.data.totalAfter - priced.data.totalBefore;
  const subject = { revision, requestId, contentDigest, costBookDigest: costBook.digest, premiumDigest };
  return (
    <>
      <p className="price-line">
        <b>{addsWords(money, currency)}</b> <ForShow forShow={forShow} />
        {priced.data.notPriced.length === 0 ? null : " Some of its steel is not known here and has no price."}
      </p>
      {request.state === "declined" ? null : (
        <DecisionForm
          subject={subject}
          money={money}
          currency={currency}
          last={lastWord(decisions.data, { revision, requestId })}
          asleepBecause={project.revision === revision ? undefined : "There is a newer revision."}
        />
      )}
    </>
  );
}

export function addsWords(money: number, currency: string): string {
  if (Math.round(money / 10) === 0) return "It costs nothing more.";
  return money > 0
    ? `It adds ${moneyText(money, currency)} to the premium.`
    : `It saves ${moneyText(-money, currency)} of the premium.`;
}
