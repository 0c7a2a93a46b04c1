import type { RecordEntry } from "@cornerway/schema";
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
    default:
      return capital(kind);
  }
}
