import type { ChangeRequest } from "@cornerway/schema";
import { useRoom } from "../room/room-context.ts";
import { moneyText } from "../wording/money.ts";
import { DecisionForm } from "./DecisionForm.tsx";
import { ForShow } from "./ForShow.tsx";
import { costsAnything, useRequestSubject } from "./use-request-subject.ts";
import "./prices.css";

/** What a change request adds to the premium, and the owner's word on it; nothing for those who see no prices. */
export function RequestPrice({ request }: { request: ChangeRequest }) {
  const { project } = useRoom();
  const { priced, subject, last, isOpen, error } = useRequestSubject(request);
  if (priced === undefined)
    return error ? <p className="field-fault">It cannot be priced now: {error.message}</p> : null;
  const { currency, forShow, notPriced } = priced;
  const money = priced.totalAfter - priced.totalBefore;
  const takenIn = request.state === "taken in";
  return (
    <>
      <p className="price-line">
        <b>{addsWords(money, currency)}</b> <ForShow forShow={forShow} />
        {notPriced.length === 0 ? null : " Some of its steel is not known here and has no price."}
      </p>
      {request.state === "declined" || (takenIn && !costsAnything(priced)) ? null : (
        <DecisionForm
          {...{ subject, money, currency, last }}
          {...(takenIn && { notYet: notAgreedWords })}
          asleepBecause={isOpen ? undefined : whyClosed(takenIn, project.revision)}
        />
      )}
    </>
  );
}

export const notAgreedWords = "Not yet agreed by the owner.";

const whyClosed = (takenIn: boolean, newest: string | null): string =>
  takenIn
    ? `What is drawn has changed since it was priced. Revision ${newest ?? ""} has a price of its own.`
    : "There is a newer revision.";

export function addsWords(money: number, currency: string): string {
  if (Math.round(money / 10) === 0) return "It costs nothing more.";
  return money > 0
    ? `It adds ${moneyText(money, currency)} to the premium.`
    : `It saves ${moneyText(-money, currency)} of the premium.`;
}
