import type { Act, RecordKind } from "@cornerway/schema";

/** What each act is called in the table of who may do what. */
export const actNames: Record<Act, string> = {
  draw: "Draw on the draft",
  "send-revision": "Send a revision",
  "run-assessment": "Have a revision checked again",
  "write-note": "Write a note",
  "settle-note": "Settle a note",
  "make-request": "Ask for a change",
  "answer-request": "Take a change in, or decline it",
  "press-stamp": "Press the stamp",
  "read-draft": "See the draft",
  "read-revisions": "See the revisions that were sent",
  "read-record": "Read the record",
  "read-people": "See who has a part",
  invite: "Ask people in",
  "confirm-engineer": "Say who the engineer is",
  "remove-person": "Take a part away",
  "set-expiry": "Say when a reader's part ends",
  "keep-webhooks": "Have other services told",
};

/** What each kind of entry is called in the table of who may see what. */
export const entryNames: Record<RecordKind, string> = {
  "project opened": "The project opened",
  "role given": "Who was given a part",
  "person invited": "Who was asked in",
  "invitation withdrawn": "Invitations withdrawn",
  "role confirmed": "Who was confirmed as the engineer",
  "role removed": "Parts taken away",
  "role expired": "Parts that ran out",
  "expiry set": "When a reader's part ends",
  drawn: "What was drawn",
  "revision sent": "Revisions sent",
  assessed: "What the engine found in a revision",
  "assessment asked for": "A check asked for again",
  "assessment failed": "A check that did not come through",
  "note written": "Notes",
  "note settled": "Notes settled",
  "request made": "Changes asked for",
  "request taken in": "Changes taken in",
  "request declined": "Changes declined",
  "stamp pressed": "Stamps",
  "webhook made": "Other services told",
  "webhook ended": "Other services told no more",
  "webhook stopped": "Other services that do not answer",
};
