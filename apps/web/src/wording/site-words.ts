import type { BuiltState, SiteItem, SiteItemKind, SiteItemState, SiteWord } from "@cornerway/schema";
import type { NameOf } from "./name-of.ts";

export const itemKindWords: Record<SiteItemKind, string> = {
  post: "Post",
  beam: "Beam",
  seat: "Seat",
  framing: "Framing",
  tie: "Tie",
  lock: "Lock or connection",
  pad: "Pad",
  weld: "Welds",
  "hold point": "Hold point",
};

/** Heading of all items of a kind. */
export const itemHeadings: Record<SiteItemKind, string> = {
  post: "Posts",
  beam: "Beams",
  seat: "Seats",
  framing: "Framing of openings",
  tie: "Ties",
  lock: "Locks and connections",
  pad: "Pads",
  weld: "Welds",
  "hold point": "Hold points",
};

export const itemStateWords: Record<SiteItemState, string> = {
  open: "open",
  built: "built as drawn",
  differs: "stands otherwise",
  missing: "is not there",
  accepted: "stands otherwise, accepted by the engineer",
  "to mend": "to be made as drawn",
};

export const builtWords: Record<BuiltState, string> = {
  "nothing to build from": "There is nothing to build from yet",
  "being built": "being built",
  "as drawn": "built as drawn",
  "not built as drawn": "not built as drawn",
};

/** What an item is: "Welds of P1, 1.20 m in all", "G1: container surveyed". */
export function itemWords({ kind, point, weldM }: SiteItem, tag: string): string {
  if (point !== null) return `${tag}: ${point}`;
  return weldM === null ? `${itemKindWords[kind]} ${tag}` : `Welds of ${tag}, ${weldM.toFixed(1)} m in all`;
}

const saidWords: Record<SiteWord["says"], string> = {
  built: "built as drawn",
  differs: "stands otherwise",
  missing: "is not there",
  accepted: "may stay as it is",
  "to mend": "is to be made as drawn",
  reopened: "opened again",
};

export function siteWordSentence(word: SiteWord, nameOf: NameOf): string {
  const [kind = ""] = word.key.split(":");
  const of = nameOf(word.elementId);
  return `On site, ${kind} ${of}: ${saidWords[word.says]}${word.text === null ? "." : `: ${word.text}`}`;
}

/** The same at the head of what a person says: "Is not there". */
export const wordSaid = (says: SiteWord["says"]): string =>
  `${saidWords[says].charAt(0).toUpperCase()}${saidWords[says].slice(1)}`;
