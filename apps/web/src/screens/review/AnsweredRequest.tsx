import type { ChangeRequest } from "@cornerway/schema";
import { NotAgreedWord } from "../../prices/NotAgreed.tsx";
import { RequestPrice } from "../../prices/RequestPrice.tsx";

/** A request that was answered: folded to a line, still findable. What it costs stays open to the owner once it is taken in. */
export function AnsweredRequest({ request }: { request: ChangeRequest }) {
  const { number, state, text, answer } = request;
  return (
    <details className="review-answered">
      <summary>
        Change request {number}, {state}
        {answer === null ? "" : ` by ${answer.by.name}`}
        {state === "taken in" ? <NotAgreedWord request={request} /> : null}
      </summary>
      <p className="said-by-person hand-engineer">{text}</p>
      {answer?.reason == null ? null : <p className="said-by-person">{answer.reason}</p>}
      {state === "taken in" ? <RequestPrice request={request} /> : null}
    </details>
  );
}
