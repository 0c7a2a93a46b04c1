import { siteItems } from "@cornerway/engine";
import {
  elementNames,
  siteItemsNow,
  standsOtherwise,
  surveyDepartures,
  type Digest,
  type RecordEntry,
  type Scheme,
} from "@cornerway/schema";
import { containersIn, siteWordsIn } from "./found-in-record.ts";

/** How a revision stands at a head of the record. Whatever comes after "issued" takes that off its sheets again. */
export type SetStatus =
  | { kind: "preliminary" }
  | { kind: "issued"; by: string; at: string }
  | { kind: "superseded"; byRevision: string }
  | { kind: "found otherwise"; tags: readonly string[] };

export interface StatusOf {
  letter: string;
  scheme: Scheme;
  contentDigest: Digest;
  resultDigest: Digest;
  /** The record up to the head, as a reader may see it. */
  entries: readonly RecordEntry[];
}

/** The same as the issue's standing is on the way to the seal, told from the record alone, so that one head always prints one status. */
export function statusOf({ letter, scheme, contentDigest, resultDigest, entries }: StatusOf): SetStatus {
  const newest = entries.findLast(({ payload }) => payload?.kind === "revision sent")?.payload;
  if (newest?.kind === "revision sent" && newest.letter !== letter)
    return { kind: "superseded", byRevision: newest.letter };
  const issue = entries
    .flatMap(({ payload }) => (payload?.kind === "issued for seal" ? [payload.issue] : []))
    .findLast(
      (each) => each.revision === letter && each.contentDigest === contentDigest && each.resultDigest === resultDigest,
    );
  if (issue === undefined) return { kind: "preliminary" };
  const tags = foundOtherwiseIn(scheme, entries);
  return tags.length > 0
    ? { kind: "found otherwise", tags }
    : { kind: "issued", by: issue.author.name, at: issue.issuedAt };
}

/** Tags of the elements of which survey or site have found something else than the scheme draws. */
function foundOtherwiseIn(scheme: Scheme, entries: readonly RecordEntry[]): string[] {
  const names = elementNames(scheme);
  const surveyed = containersIn(entries).flatMap((each) => surveyDepartures(scheme, each));
  const onSite = standsOtherwise(siteItemsNow(scheme, siteItems(scheme), siteWordsIn(entries)));
  const ids = new Set([...surveyed.map(({ elementId }) => elementId), ...onSite]);
  return [...ids].map((id) => names.get(id) ?? id).toSorted();
}

/** What stands on every page: it is never the program that makes a set valid. */
export function statusLine({ status }: { status: SetStatus }): string {
  switch (status.kind) {
    case "preliminary":
      return "PRELIMINARY. NOT FOR CONSTRUCTION";
    case "issued":
      return "Not valid without the seal of the engineer of record";
    case "superseded":
      return `SUPERSEDED BY REVISION ${status.byRevision}. DO NOT BUILD FROM IT`;
    case "found otherwise":
      return "PRELIMINARY AGAIN: FOUND OTHERWISE THAN DRAWN";
  }
}
