import type { ChangeRequest } from "@cornerway/schema";

/** A request that was answered: folded to a line, still findable. */
export function AnsweredRequest({ request }: { request: ChangeRequest }) {
  const { number, state, text, answer } = request;
  return (
    <details className="review-answered">
      <summary>
        Change request {number}, {state}
        {answer === null ? "" : ` by ${answer.by.name}`}
      </summary>
      <p className="said-by-person hand-engineer">{text}</p>
      {answer?.reason == null ? null : <p className="said-by-person">{answer.reason}</p>}
    </details>
  );
}
