import type { StampRefusal } from "../stamp-rules.ts";

/** Why a stamp is not open, in one sentence for whoever would press it. */
export function stampRefusalSentence(refusal: StampRefusal): string {
  switch (refusal.why) {
    case "strength not judged":
      return "No strength is judged on it.";
    case "gravity alone":
      return "Gravity alone is judged: wind, snow and earthquake are not entered.";
    case "does not work":
      return refusal.marks === 1 ? "1 mark does not work." : `${refusal.marks} marks do not work.`;
    case "not checked":
      return refusal.marks === 1 ? "1 mark is not checked." : `${refusal.marks} marks are not checked.`;
    case "needs the engineer":
      return refusal.marks === 1
        ? "1 mark needs the engineer and has no answer on it yet."
        : `${refusal.marks} marks need the engineer and have no answer on them yet.`;
    case "found otherwise":
      return refusal.elements.length === 1
        ? "Survey or site found 1 element otherwise than it is drawn."
        : `Survey or site found ${refusal.elements.length} elements otherwise than they are drawn.`;
    case "requests open":
      return refusal.requests === 1 ? "1 change request is open." : `${refusal.requests} change requests are open.`;
    case "conditions open":
      return refusal.conditions === 1 ? "1 condition is open." : `${refusal.conditions} conditions are open.`;
  }
}
