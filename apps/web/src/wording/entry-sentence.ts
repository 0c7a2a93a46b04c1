import type { Check, Licence, RecordPayload, UnitSystem } from "@cornerway/schema";
import { dateOf } from "../controls/calendar.ts";
import { actSentence } from "./act-sentence.ts";
import { commentStepSentence } from "./comment-sentence.ts";
import { decisionSentence } from "./decision-sentence.ts";
import { conditionStepSentence, questionStepSentence } from "./follow-sentence.ts";
import type { NameOf } from "./name-of.ts";
import { siteWordSentence } from "./site-words.ts";
import { numberWords, surveyStepSentence } from "./survey-words.ts";

/**
 * What one entry of the record says happened. Null payload: something this reader may not see. `undos` are the acts
 * that took another back: taking one of those back draws the first again.
 */
export function entrySentence(
  payload: RecordPayload | null,
  nameOf: NameOf,
  undos: ReadonlySet<string>,
  units: UnitSystem,
): string {
  if (payload === null) return "Something not shown here.";
  switch (payload.kind) {
    case "project opened":
      return `${payload.name} opened.`;
    case "role given":
      return `${payload.personName} is the ${payload.role}${endWords(payload.expiresAt)}${askedInWords(payload.invitedBy)}.`;
    case "person invited":
      return `${payload.email} asked in as ${payload.role}.`;
    case "invitation withdrawn":
      return `The invitation of ${payload.email} as ${payload.role} withdrawn.`;
    case "role confirmed":
      return `${payload.personName} confirmed as ${payload.role}${licenceWords(payload.licence)}.`;
    case "role removed":
      return `${payload.personName} is no longer the ${payload.role}.`;
    case "role expired":
      return `The part of ${payload.personName} as ${payload.role} ran out.`;
    case "expiry set":
      return `The part of ${payload.personName} as ${payload.role} ends on ${dateOf(payload.expiresAt)}.`;
    case "reader link made":
      return `A link to read made for ${payload.name}, good until ${dateOf(payload.expiresAt)}.`;
    case "reader link opened":
      return `${payload.name} opened the link to read.`;
    case "reader link ended":
      return `The link of ${payload.name} opens nothing any more.`;
    case "brought in":
      return `Brought in with entries 1 to ${payload.upTo}, signed by the key ${payload.head.fingerprint.slice(0, 16)}….`;
    case "webhook made":
      return `${payload.host} is told of this project.`;
    case "webhook ended":
      return `${payload.host} is told no more.`;
    case "webhook stopped":
      return `${payload.host} does not answer and is told no more: ${payload.why}`;
    case "drawn":
      return sentence(
        `${undoWords(payload.undoes, undos)}${actSentence(payload.operations, payload.inverse, nameOf, units)}.`,
      );
    case "revision sent":
      return `Revision ${payload.letter} sent${payload.remark === null ? "." : `: ${payload.remark}`}`;
    case "assessed":
      return `Revision ${payload.letter}: ${payload.verdict}.`;
    case "assessment asked for":
      return `Revision ${payload.letter} is to be checked again.`;
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
    case "cost book changed":
      return `The cost book changed: number ${payload.number}.`;
    case "decision made":
      return decisionSentence(payload.decision);
    case "option set opened":
      return `Alternatives ${payload.number}: ${payload.name}.`;
    case "option kept":
      return `Alternative ${payload.setNumber}.${payload.option.place} kept: ${payload.option.name}.`;
    case "option assessed":
      return payload.why === null
        ? `Alternative ${payload.setNumber}.${payload.place}: ${payload.verdict}.`
        : `Alternative ${payload.setNumber}.${payload.place} could not be checked: ${payload.why}`;
    case "option picked":
      return `Alternative ${payload.setNumber}.${payload.place}, ${payload.name}, picked${payload.pick.reason === null ? "." : `: ${payload.pick.reason}`}`;
    case "option withdrawn":
      return `Alternative ${payload.setNumber}.${payload.place}, ${payload.name}, withdrawn${payload.withdrawal.reason === null ? "." : `: ${payload.withdrawal.reason}`}`;
    case "question asked":
      return `Question ${payload.question.number} on ${nameOf(payload.question.elementId)}: ${payload.question.wanted}`;
    case "question followed":
      return questionStepSentence(payload, nameOf);
    case "revision checked":
      return `Revision ${payload.check.revision} checked: ${checkWords(payload.check)}.`;
    case "mark disposed":
      return `The engineer's disposition ${payload.disposition.number} on a mark of revision ${payload.disposition.revision}: ${payload.disposition.reason}`;
    case "values confirmed":
      return `${payload.confirmation.values.length} values from memory held against ${payload.confirmation.against}.`;
    case "file kept":
      return `${payload.file.name} laid here.`;
    case "container offered":
      return `${numberWords(payload.container.containerNumber)} offered for the building.`;
    case "container followed":
      return surveyStepSentence(payload);
    case "survey limits set":
      return "The limits of the survey set for this project.";
    case "site word said":
      return siteWordSentence(payload.word, nameOf);
    case "issued for seal":
      return `Revision ${payload.issue.revision} issued for seal.`;
    case "sealed copy kept":
      return `Sealed copy of revision ${payload.revision} laid here: ${payload.copy.name}.`;
    case "condition followed":
      return conditionStepSentence(payload);
    case "set printed":
      return `Permit set of revision ${payload.letter} printed, ${payload.pages} pages, from the record to entry ${payload.upTo}.`;
    case "authority described":
      return `How ${payload.profile.name ?? "the authority"} wants a set marked and answered, laid down.`;
    case "comments brought in":
      return `${payload.comments.length} comments of the authority brought in.`;
    case "comment followed":
      return commentStepSentence(payload);
    case "stamp pressed":
      return `Revision ${payload.stamp.revision} stamped: ${payload.stamp.disposition}.`;
  }
}

/** Acts that took another back and are not themselves a drawing-again. */
export function undosIn(payloads: readonly (RecordPayload | null)[]): ReadonlySet<string> {
  const undos = new Set<string>();
  for (const payload of payloads)
    if (payload?.kind === "drawn" && payload.undoes !== null && !undos.has(payload.undoes)) undos.add(payload.actId);
  return undos;
}

const endWords = (expiresAt: string | undefined) => (expiresAt === undefined ? "" : ` until ${dateOf(expiresAt)}`);

const askedInWords = (by: string | undefined) => (by === undefined ? "" : `, asked in by ${by}`);

const licenceWords = (licence: Licence | null) =>
  licence === null ? ", no licence stated" : `, licence ${licence.number}, ${licence.jurisdiction}, as stated by them`;

const undoWords = (undoes: string | null, undos: ReadonlySet<string>) =>
  undoes === null ? "" : undos.has(undoes) ? "drawn again: " : "taken back: ";

const checkWords = ({ outcome, points }: Check) => (outcome === "agrees" ? "agrees" : `${points.length} left open`);

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
