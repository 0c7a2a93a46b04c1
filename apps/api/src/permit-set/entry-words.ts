import { containerNumberWords, type RecordEntry, type SurveyStep } from "@cornerway/schema";
import { capital } from "./paper/words.ts";

/** What one entry says to the permit reviewer. Kinds without words of their own are named by their kind. */
export function entryWords({ kind, payload }: RecordEntry): string {
  switch (payload?.kind) {
    case "project opened":
      return `Project opened: ${payload.name}`;
    case "role given":
      return `${payload.personName} is the ${payload.role}`;
    case "role confirmed":
      return `${payload.personName} confirmed as ${payload.role}${payload.licence === null ? ", no licence stated" : `, licence ${payload.licence.number}, ${payload.licence.jurisdiction}, as stated by them`}`;
    case "role removed":
    case "role expired":
      return `${payload.personName} is no longer the ${payload.role}`;
    case "revision sent":
      return `Revision ${payload.letter} sent${payload.remark === null ? "" : `: ${payload.remark}`}`;
    case "assessed":
      return `Revision ${payload.letter}, by the engine: ${payload.verdict}`;
    case "stamp pressed":
      return `Revision ${payload.stamp.revision}, review between the parties: ${payload.stamp.disposition}`;
    case "issued for seal":
      return `Revision ${payload.issue.revision} issued for seal`;
    case "sealed copy kept":
      return `Sealed copy of revision ${payload.revision} kept, SHA-256 ${payload.copy.digest.slice(0, 16)}…`;
    case "revision checked":
      return `Revision ${payload.check.revision} checked by a second engineer: ${payload.check.outcome}`;
    case "mark disposed":
      return `Disposition ${payload.disposition.number} on a mark of revision ${payload.disposition.revision}`;
    case "values confirmed":
      return `${payload.confirmation.values.length} values from memory confirmed against ${payload.confirmation.against}`;
    case "brought in":
      return `Entries 1 to ${payload.upTo} brought in, signed by the key ${payload.head.fingerprint.slice(0, 16)}…`;
    case "set printed":
      return `Permit set of revision ${payload.letter} printed from the record to entry ${payload.upTo}`;
    case "authority described":
      return `How ${payload.profile.name ?? "the authority"} wants a set marked and answered, laid down`;
    case "comments brought in":
      return `${payload.comments.length} comments of the authority brought in`;
    case "comment followed":
      return `Comment ${payload.number} of the authority: ${payload.step.step}`;
    case "container offered":
      return `Container ${containerNumberWords(payload.container.containerNumber)} offered for the building`;
    case "container followed":
      return `Container ${containerNumberWords(payload.containerNumber)}: ${surveyStepWords(payload.step)}`;
    case "site word said":
      return `On site, ${payload.word.key.split(":")[0]}: ${payload.word.says}`;
    default:
      return capital(kind);
  }
}

function surveyStepWords(step: SurveyStep): string {
  switch (step.step) {
    case "judged":
      return step.outcome === "repair" ? "to be repaired" : step.outcome;
    case "assigned":
      return `assigned to ${step.tag}`;
    default:
      return step.step;
  }
}
