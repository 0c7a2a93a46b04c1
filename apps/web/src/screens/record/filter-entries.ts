import { elementOf } from "@cornerway/schema";
import type { RecordEntry, RecordPayload } from "@cornerway/schema";
import type { NameOf } from "../../wording/name-of.ts";

/** Matters one looks for in a record. */
export const matters = [
  "everything",
  "drawing",
  "revisions",
  "notes",
  "questions",
  "requests",
  "stamps",
  "people",
] as const;
export type Matter = (typeof matters)[number];

export interface RecordFilter {
  /** Id of who acted; null for anyone. */
  personId: string | null;
  matter: Matter;
  /** Label of an element, as written on the drawing; empty for any. */
  element: string;
}

export const noFilter: RecordFilter = { personId: null, matter: "everything", element: "" };

/** The entries that meet a filter, in their order; numbers between them are missing then and say so. */
export function filterEntries(
  entries: readonly RecordEntry[],
  { personId, matter, element }: RecordFilter,
  nameOf: NameOf,
): RecordEntry[] {
  const label = element.trim().toUpperCase();
  return entries.filter(
    (entry) =>
      (personId === null || entry.actor.id === personId) &&
      (matter === "everything" || matterOf(entry.kind) === matter) &&
      (label === "" || elementsOf(entry.payload).some((id) => nameOf(id).toUpperCase() === label)),
  );
}

function matterOf(kind: string): Matter {
  if (kind === "drawn") return "drawing";
  if (/^(revision|assess)/.test(kind)) return "revisions";
  if (kind.startsWith("note")) return "notes";
  if (/^(question|condition)/.test(kind)) return "questions";
  if (kind.startsWith("request")) return "requests";
  return /^(stamp|mark|values|file|issued|sealed)/.test(kind) ? "stamps" : "people";
}

/** Ids of the elements an entry speaks of. */
function elementsOf(payload: RecordPayload | null): string[] {
  switch (payload?.kind) {
    case "drawn":
      return payload.operations.flatMap((operation) => {
        const element = elementOf(operation);
        if (element !== undefined) return [element.id];
        return "id" in operation ? [operation.id] : [];
      });
    case "note written":
      return [payload.note.elementId];
    case "question asked":
      return [payload.question.elementId];
    case "question followed":
      return [payload.elementId];
    case "site word said":
      return [payload.word.elementId];
    case "container followed":
      return payload.step.step === "assigned" ? [payload.step.elementId] : [];
    default:
      return [];
  }
}
