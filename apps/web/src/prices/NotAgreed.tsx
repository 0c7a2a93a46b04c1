import type { ChangeRequest } from "@cornerway/schema";
import { addsWords, RequestPrice } from "./RequestPrice.tsx";
import { costsAnything, useRequestSubject } from "./use-request-subject.ts";

/** A change that was taken in while its price waits for the owner's word; nothing once that stands, or where none is asked. */
export function NotAgreed({ request }: { request: ChangeRequest }) {
  const { priced, last, isOpen } = useRequestSubject(request);
  if (priced === undefined || !isOpen || !costsAnything(priced)) return null;
  if (last !== undefined && last.stale.length === 0) return null;
  return (
    <section className="price-not-agreed" aria-label={`Price of change request ${request.number}`}>
      <p>Change request {request.number} was taken in.</p>
      <RequestPrice request={request} />
    </section>
  );
}

/** The same in the one line of a folded request. */
export function NotAgreedWord({ request }: { request: ChangeRequest }) {
  const { priced, last, isOpen } = useRequestSubject(request);
  if (priced === undefined || !costsAnything(priced)) return null;
  const { decision, stale } = last ?? {};
  if (decision !== undefined && stale?.length === 0)
    return decision.decision === "agree" ? <>, agreed by the owner</> : <>, its price declined by the owner</>;
  const adds = addsWords(priced.totalAfter - priced.totalBefore, priced.currency).replace(/\.$/, "");
  return isOpen ? <>. {adds}, not yet agreed by the owner</> : <>. {adds}, never agreed by the owner</>;
}
