import type { RecordPayload } from "@cornerway/schema";
import { actSentence } from "./act-sentence.ts";
import type { NameOf } from "./name-of.ts";

/** What one entry of the record says happened. Null payload: something this reader may not see. */
export function entrySentence(payload: RecordPayload | null, nameOf: NameOf): string {
  if (payload === null) return "Something not shown here.";
  switch (payload.kind) {
    case "project opened":
      return `${payload.name} opened.`;
    case "role given":
      return `${payload.personName} is the ${payload.role}.`;
    case "drawn":
      return sentence(`${payload.undoes === null ? "" : "taken back: "}${actSentence(payload.operations, payload.inverse, nameOf)}.`);
    case "revision sent":
      return `Revision ${payload.letter} sent${payload.remark === null ? "." : `: ${payload.remark}`}`;
    case "assessed":
      return `Revision ${payload.letter}: ${payload.verdict}, load path only.`;
    case "assessment failed":
      return `Revision ${payload.letter} could not be checked: ${payload.why}`;
    case "note written":
      return `Note on ${nameOf(payload.note.elementId)}: ${payload.note.text}`;
    case "note settled":
      return "A note settled.";
    case "request made":
      return `Change request ${payload.request.number}: ${payload.request.text}`;
    case "request taken in":
      return `Change request ${payload.number} taken in.`;
    case "request declined":
      return `Change request ${payload.number} declined: ${payload.reason}`;
    case "stamp pressed":
      return `Revision ${payload.stamp.revision} stamped: ${payload.stamp.disposition}.`;
  }
}

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
