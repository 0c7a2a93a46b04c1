import type { ChangeRequest, Mark } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { verdictClass } from "../../look/verdict-class.ts";
import { RequestPrice } from "../../prices/RequestPrice.tsx";
import type { Offer } from "../../sheet/contract.ts";
import type { Hindrance } from "./hindrances.ts";

/** The numbered list of what stands in the way, each with who acts. */
export function InTheWay({
  sent,
  inTheWay,
  requests,
  offerOn,
}: {
  /** True once a revision was sent. */
  sent: boolean;
  inTheWay: readonly Hindrance[];
  requests: readonly ChangeRequest[];
  /** The way to what would settle a mark; absent for those who see no prices. */
  offerOn?: (mark: Mark) => Offer | undefined;
}) {
  if (inTheWay.length === 0)
    return <p>{sent ? "Nothing stands in the way." : "Nothing was sent yet, so nothing stands in the way."}</p>;
  return (
    <ol className="status-list">
      {inTheWay.map(({ id, heading, sentence, who, verdict, mark }, at) => {
        const offer = mark === null ? undefined : offerOn?.(mark);
        const request = requests.find((each) => each.id === id);
        const hand = verdict === "request" ? "hand-engineer" : verdictClass(verdict);
        return (
          <li key={id}>
            <span className={`status-number ${hand}`} aria-hidden="true">
              {at + 1}
            </span>
            <div>
              <h3 className={hand}>{heading}</h3>
              <p className={verdict === "request" ? "said-by-person" : undefined}>{sentence}</p>
              {request === undefined ? null : <RequestPrice request={request} />}
              <p className="status-who">{who}</p>
              {offer === undefined ? null : (
                <Command quiet onPress={offer.onPress}>
                  {offer.label}
                </Command>
              )}
            </div>
          </li>
        );
      })}
    </ol>
  );
}
