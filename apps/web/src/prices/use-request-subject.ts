import type { ChangeRequest, NewDecision, RequestPremium } from "@cornerway/schema";
import { lastWord, useDecisions } from "../data/decision.ts";
import { useRequestPremium } from "../data/premium.ts";
import { useRevision } from "../data/revision.ts";
import { useRoom } from "../room/room-context.ts";

/**
 * The price of a change request with what the owner's word on it is given to. A request that was taken in is still decided on
 * while the newest revision is the one it was made on, or holds the very drawing that was priced.
 */
export function useRequestSubject(request: ChangeRequest) {
  const { project } = useRoom();
  const { data: priced, error } = useRequestPremium(project, request.id);
  const decisions = useDecisions(project).data;
  const isNewest = project.revision === request.revision;
  const newest = useRevision(project.id, isNewest || request.state !== "taken in" ? null : project.revision).data;
  if (priced === undefined) return { error };
  const { revision, requestId, contentDigest, premiumDigest, costBook } = priced;
  const subject: Pick<NewDecision, "revision" | "requestId" | "contentDigest" | "costBookDigest" | "premiumDigest"> = {
    revision,
    requestId,
    contentDigest,
    costBookDigest: costBook.digest,
    premiumDigest,
  };
  const isOpen = isNewest || newest?.contentDigest === contentDigest;
  return { priced, subject, last: lastWord(decisions, { revision, requestId }), isOpen };
}

/** False where it changes nothing that is paid for, so that there is nothing to agree to. */
export const costsAnything = ({ lines, notPriced }: Pick<RequestPremium, "lines" | "notPriced">): boolean =>
  lines.length > 0 || notPriced.length > 0;
