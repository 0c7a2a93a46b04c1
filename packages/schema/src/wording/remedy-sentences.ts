import type { RemedyChange, RemedyFailed, RemedyList, RemedyRefusal } from "../remedy.ts";
import { chartSentence } from "./chart-sentences.ts";
import { inRow, type Figures } from "./figures.ts";

/** What an option does, as an order: "Move D3 0.85 m east". `tagOf` names elements by their ids, new ones too. */
export function remedySentence(change: RemedyChange, tagOf: (id: string) => string, say: Figures): string {
  switch (change.kind) {
    case "move opening":
      return `Move ${tagOf(change.openingId)} ${say.length(change.byMm)} ${change.towards}.`;
    case "narrow opening":
      return `Narrow ${tagOf(change.openingId)} from ${say.length(change.fromMm)} to ${say.length(change.toMm)}, ${change.from === "both sides" ? "both sides alike" : `from its ${change.from} side`}.`;
    case "leave unframed":
      return `Leave ${tagOf(change.openingId)} without a frame, ${say.length(change.widthMm)} wide.`;
    case "lower opening":
      return `Lower the head of ${tagOf(change.openingId)} by ${say.length(change.byMm)}.`;
    case "cut in place":
      return `Cut ${tagOf(change.openingId)} once the unit stands, under shores.`;
    case "split opening":
      return `Split ${tagOf(change.openingId)} into two, ${say.length(change.eachMm)} wide each, with ${say.length(change.pierMm)} of wall between.`;
    case "leave a pier":
      return `Leave a pier of ${say.length(change.pierMm)} in ${tagOf(change.openingId)}.`;
    case "frame opening":
      return `Frame ${inRow(change.openingIds.map(tagOf))} with jambs ${change.jamb} and header ${change.header}${change.sill === null ? "" : `, sill ${change.sill}`}.`;
    case "header":
      return `Carry all over ${tagOf(change.openingId)} with one header, ${change.section}, ${say.small(change.depthMm)} deep${change.outOfProportion ? ": out of proportion, posts would do" : ""}.`;
    case "posts":
      return postsSentence(change, tagOf, say);
    case "seats":
      return `Set ${counted(change.places, "seat")} with packing under ${tagOf(change.unitId)}, plates ${say.small(change.lengthMm)} long${change.heldDown ? ", welded down" : ""}${change.stiffenerMm === undefined ? "" : `, and stiffeners of ${say.small(change.stiffenerMm)} in the rails over them`}.`;
    case "longer seats":
      return `Make ${inRow(change.seatIds.map(tagOf))} ${say.small(change.toMm)} long.`;
    case "stiffeners":
      return `Weld stiffeners of ${say.small(change.thicknessMm)} into the bottom rail over ${inRow(change.seatIds.map(tagOf))}.`;
    case "packing":
      return `Pack ${tagOf(change.seatId)} to ${say.small(change.toMm)}.`;
    case "made connections":
      return `Hold ${tagOf(change.unitId)} down at ${counted(change.places, "bearing")} with ${heldWith[change.as]}.`;
    case "shorter overhang":
      return `Push ${tagOf(change.unitId)} back ${say.length(change.byMm)} ${change.towards}.`;
    case "land on fittings":
      return `Move ${tagOf(change.unitId)} ${say.length(change.byMm)} ${change.towards} so that ${counted(change.landings, "corner")} land on fittings${gapWords(change.gap, tagOf, say)}.`;
    case "weld doors":
      return `Weld the doors of ${tagOf(change.unitId)} shut, all round.`;
    case "close openings":
      return `Close ${inRow(change.openingIds.map(tagOf))} with sheet again.`;
    case "swap units":
      return `Let ${tagOf(change.unitId)} and ${tagOf(change.withId)} change places.`;
    case "ties":
      return `Tie ${tagOf(change.unitIds[0])} to ${tagOf(change.unitIds[1])} at ${counted(change.places, "place")}.`;
    case "larger pads":
      return `Make ${inRow(change.padIds.map(tagOf))} ${say.length(change.sideMm)} square.`;
    case "heavier post":
      return `Make ${inRow(change.postIds.map(tagOf))} ${change.section}.`;
    case "other unit":
      return `Set a unit of type ${change.type} in place of ${tagOf(change.unitId)}.`;
  }
}

/** What else a way needs, one sentence for all: "With it: …"; empty where it needs nothing. */
export const remedyAlsoSentence = (also: readonly RemedyChange[], tagOf: Tag, say: Figures): string =>
  also.length === 0
    ? ""
    : `With it: ${also.map((change) => uncapitalised(remedySentence(change, tagOf, say)).replace(/\.$/, "")).join("; ")}.`;

type Posts = Extract<RemedyChange, { kind: "posts" }>;

function postsSentence(
  { unitId, postIds, under, section, padMm, header, inPlace }: Posts,
  tagOf: Tag,
  say: Figures,
): string {
  const where = { corners: "under the corners", rail: "under the rails", bearings: "under the bearings", opening: "" };
  const posts = counted(postIds.length, "post");
  const over = header === null ? "" : ` with a header ${header}`;
  const place = under === "opening" ? `in the wall of ${tagOf(unitId)}` : `${where[under]} of ${tagOf(unitId)}`;
  const pads = padMm === null ? "" : `, on pads ${say.length(padMm)} square`;
  return `Stand ${posts} ${section} ${place}${over}${pads}${inPlace === true ? ", and cut the opening under shores" : ""}.`;
}

type Tag = (id: string) => string;

const heldWith = {
  lock: "stock locks",
  "made connection": "welded plates",
  "hold-down": "anchors to the pads",
} as const;

const gapWords = (gap: Extract<RemedyChange, { kind: "land on fittings" }>["gap"], tagOf: Tag, say: Figures): string =>
  gap === null ? "" : `, with ${tagOf(gap.movesId)} moved to leave a gap of ${say.length(gap.neededMm)}`;

const counted = (count: number, what: string): string =>
  `${count < words.length ? words[count] : count} ${what}${count === 1 ? "" : "s"}`;
const words = ["no", "one", "two", "three", "four", "five", "six"] as const;

/** Why nothing was looked for: what the mark is about does not stand itself, or what comes down there does not. */
export function settleFirstSentence({ markId, settleFirst = [] }: SettleFirst, tagOf: Tag): string {
  const names = inRow(settleFirst.map(tagOf));
  if (settleFirst.some((id) => markId.split(":")[1] === id))
    return `Nothing was looked for yet: ${names} does not stand, and this goes with what makes it stand. Settle that first, then look again.`;
  const verbs = settleFirst.length === 1 ? "comes down on it and does" : "come down on it and do";
  return `Nothing was looked for yet: ${names} ${verbs} not stand. Settle that first, then look again.`;
}

type SettleFirst = Pick<RemedyList, "markId" | "settleFirst">;

/** Why a change is not offered, in one sentence. */
export function remedyRefusalSentence(why: RemedyRefusal, tagOf: Tag): string {
  switch (why.kind) {
    case "cannot be drawn":
      return "It cannot be drawn here.";
    case "does not settle it":
      return "It does not settle the note.";
    case "worsens":
      return `It would bring ${why.markIds.length === 1 ? "a new note" : `${why.markIds.length} new notes`} on ${inRow(subjectsOf(why.markIds, tagOf))}.`;
    case "at a look":
      return chartSentence({ kind: "part", because: "at a look", partId: why.partId, use: why.use ?? Infinity }, tagOf);
    case "strength":
      return chartSentence(why.why, tagOf);
  }
}

/** What the marks of these ids are about: the first element in each name. */
const subjectsOf = (markIds: readonly string[], tagOf: Tag): string[] => [
  ...new Set(markIds.map((id) => tagOf((id.split(":")[1] ?? id).split("+")[0] ?? id))),
];

/** A change with all that comes with it, in one sentence. */
export const remedyWholeSentence = (
  { change, also }: Pick<RemedyFailed, "change" | "also">,
  tagOf: Tag,
  say: Figures,
): string => [remedySentence(change, tagOf, say), remedyAlsoSentence(also, tagOf, say)].filter(Boolean).join(" ");

/** Of an option of its kind, the next less: what it is and that it fails. */
export const remedyLessSentence = (less: RemedyFailed | null, tagOf: Tag, say: Figures): string =>
  less === null
    ? "Nothing less of its kind is offered."
    : `Less does not do: ${uncapitalised(remedyWholeSentence(less, tagOf, say))} ${remedyRefusalSentence(less.why, tagOf)}`;

const uncapitalised = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);
