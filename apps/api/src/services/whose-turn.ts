import type { ChangeRequest, RevisionSummary, Role } from "@cornerway/schema";
import type { EngineersHeld } from "../store/membership-rows.ts";

export interface Turn {
  waitsFor: Role | null;
  since: string | null;
}

/**
 * Who must act next, and since when: the architect until a revision is sent, while a request is open, after one was
 * taken in and after a stamp; otherwise the engineer, once the server has assessed the revision, or the owner where they
 * have confirmed none of those who come as the engineer.
 */
export function whoseTurn(
  openedAt: string,
  latest: RevisionSummary | undefined,
  requests: readonly ChangeRequest[],
  engineers: EngineersHeld,
): Turn {
  if (latest === undefined) return { waitsFor: "architect", since: openedAt };
  if (latest.stamp !== null) return { waitsFor: "architect", since: latest.stamp.pressedAt };
  const onLatest = requests.filter(({ revision }) => revision === latest.letter);
  const open = onLatest.find(({ state }) => state === "open");
  if (open !== undefined) return { waitsFor: "architect", since: open.madeAt };
  const takenIn = onLatest.find(({ state }) => state === "taken in");
  if (takenIn !== undefined) return { waitsFor: "architect", since: takenIn.answer?.at ?? takenIn.madeAt };
  if (latest.assessment === "waiting") return { waitsFor: null, since: latest.sentAt };
  if (engineers.confirmed === 0 && engineers.waitingSince !== null)
    return { waitsFor: "owner", since: later(engineers.waitingSince, latest.sentAt) };
  return { waitsFor: "engineer", since: latest.sentAt };
}

/** Moments are written alike, so that the later one is the greater text. */
const later = (one: string, other: string): string => (one > other ? one : other);
