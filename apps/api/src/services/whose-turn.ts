import type { ChangeRequest, DecisionShown, Disposition, RevisionSummary, Role } from "@cornerway/schema";
import type { EngineersHeld } from "../store/membership-rows.ts";

export interface Turn {
  waitsFor: Role | null;
  since: string | null;
}

/** What the owner has decided, and which open requests have a price to decide on. */
export interface Prices {
  decisions: readonly DecisionShown[];
  priced: ReadonlySet<string>;
}

/**
 * Who must act next, and since when: the architect until a revision is sent, while a request is open, after one was
 * taken in and after a stamp; otherwise the engineer, once the server has assessed the revision, or the owner where they
 * have confirmed none of those who come as the engineer. The owner comes first where an open request has a price, and
 * once a stamp lets the work go on, until they have decided.
 */
export function whoseTurn(
  openedAt: string,
  latest: RevisionSummary | undefined,
  requests: readonly ChangeRequest[],
  engineers: EngineersHeld,
  prices: Prices,
): Turn {
  if (latest === undefined) return { waitsFor: "architect", since: openedAt };
  const decidedOn = (requestId: string | null) => standingDecision(prices.decisions, latest.letter, requestId);
  if (latest.stamp !== null) {
    const { disposition, pressedAt } = latest.stamp;
    if (letsGoOn.includes(disposition) && decidedOn(null) === undefined) return { waitsFor: "owner", since: pressedAt };
    return { waitsFor: "architect", since: decidedOn(null)?.decidedAt ?? pressedAt };
  }
  const onLatest = requests.filter(({ revision }) => revision === latest.letter);
  const open = onLatest.filter(({ state }) => state === "open");
  const answerable = open.find(({ id }) => !prices.priced.has(id) || decidedOn(id) !== undefined);
  if (answerable !== undefined)
    return { waitsFor: "architect", since: decidedOn(answerable.id)?.decidedAt ?? answerable.madeAt };
  if (open[0] !== undefined) return { waitsFor: "owner", since: open[0].madeAt };
  const takenIn = onLatest.find(({ state }) => state === "taken in");
  if (takenIn !== undefined) return { waitsFor: "architect", since: takenIn.answer?.at ?? takenIn.madeAt };
  if (latest.assessment === "waiting") return { waitsFor: null, since: latest.sentAt };
  if (engineers.confirmed === 0 && engineers.waitingSince !== null)
    return { waitsFor: "owner", since: later(engineers.waitingSince, latest.sentAt) };
  return { waitsFor: "engineer", since: latest.sentAt };
}

/** What the owner said last of a revision or of a request on it, while it stands. */
const standingDecision = (decisions: readonly DecisionShown[], revision: string, requestId: string | null) =>
  decisions.find(
    ({ decision, latest, stale }) =>
      latest && stale.length === 0 && decision.revision === revision && decision.requestId === requestId,
  )?.decision;

const letsGoOn: readonly Disposition[] = ["No exceptions taken", "Make corrections noted"];

/** Moments are written alike, so that the later one is the greater text. */
const later = (one: string, other: string): string => (one > other ? one : other);
