import type { RecordEntry, RecordPayload } from "@cornerway/schema";
import type { Cell } from "../description/csv.ts";
import type { Table, TableSource } from "./table.ts";

/** What went from one party to another and what came back, in the order of the record, with the digest it was of. */
export const submittalsTable = ({ entries }: TableSource): Table => ({
  head: ["entry", "at_utc", "by", "role", "submittal", "revision", "item_id", "outcome", "digest", "remark"],
  rows: entries.flatMap(({ number, at, actor, payload }: RecordEntry): Cell[][] => {
    const told = payload === null ? null : toldOf(payload);
    return told === null ? [] : [[number, at, actor.name, actor.role, ...told]];
  }),
});

/** What it is, its revision, item, outcome, digest and remark; null for what is no submittal. */
function toldOf(payload: RecordPayload): Cell[] | null {
  switch (payload.kind) {
    case "revision sent":
      return ["revision sent", payload.letter, null, null, payload.contentDigest, payload.remark];
    case "assessed":
      return [
        "checked by the engine",
        payload.letter,
        null,
        payload.verdict,
        payload.resultDigest,
        payload.engineVersion,
      ];
    case "stamp pressed": {
      const { revision, elementId, disposition, resultDigest, text } = payload.stamp;
      return ["stamp", revision, elementId ?? null, disposition, resultDigest, text];
    }
    case "revision checked": {
      const { revision, outcome, resultDigest, text } = payload.check;
      return ["independent check", revision, null, outcome, resultDigest, text];
    }
    case "issued for seal":
      return ["issued for seal", payload.issue.revision, null, null, payload.issue.resultDigest, null];
    case "sealed copy kept":
      return ["sealed copy", payload.revision, null, null, payload.copy.digest, payload.copy.name];
    case "set printed":
      return ["permit set printed", payload.letter, null, `${payload.pages} pages`, payload.setDigest, payload.units];
    case "comments brought in":
      return ["comments of the authority", null, null, `${payload.comments.length} came in`, null, null];
    case "comment followed":
      return ["comment of the authority", null, payload.number, payload.step.step, null, null];
    default:
      return null;
  }
}
