import {
  removalOf,
  settingOf,
  tagOf,
  type CollectionName,
  type ElementChange,
  type FloorLoad,
  type SchemeElement,
  type UnitSystem,
} from "@cornerway/schema";
import { printQuantity, unitOf } from "../units/quantity.ts";
import { spokenLength } from "../units/drawn-length.ts";
import { actSentence } from "./act-sentence.ts";
import { changedWords } from "./changed-words.ts";
import { containerName } from "./container-name.ts";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";
import { wayWords } from "./way-words.ts";

/** What is told: names and labels of both schemes, units, and whether the reader wants no section and no force. */
export type Telling = { nameOf: NameOf; units: UnitSystem; plain: boolean };

/** A change as a sentence in two parts, "F1" and "moved 1.20 m east"; the name is empty where it stands within. */
export type ChangeWords = { name: string; did: string };

export function changeWords(change: ElementChange, telling: Telling): ChangeWords {
  const { before, after } = change;
  if (before !== null && after !== null && !isFloorLoad(after))
    return named(after, changedTo(before, after, change, telling), telling);
  const element = after ?? before;
  if (element !== null && isFloorLoad(element)) return named(element, loadDid(element, after, telling), telling);
  if (element === null) throw new RangeError(`the change of ${change.id} has no side`);
  const along = change.with.map(tagOf).filter((tag) => tag !== undefined);
  const withIt = along.length === 0 ? "" : `, with ${listOf(along)}`;
  if (telling.plain && !toldPlainly.has(change.collection))
    return named(element, `${after === null ? "taken away" : "set"}${withIt}`, telling);
  return split(`${wholeSentence(change, element, telling)}${withIt}`, tagOf(element));
}

const isFloorLoad = (element: SchemeElement): element is FloorLoad => "pressurePa" in element && !("shape" in element);

function loadDid({ pressurePa }: FloorLoad, after: SchemeElement | null, { units, plain }: Telling): string {
  if (after === null) return "taken off";
  return plain ? "set anew" : `set to ${printQuantity("pressure", pressurePa, units)} ${unitOf("pressure", units)}`;
}

/** Lists whose sentences hold lengths alone: no section, no load. */
const toldPlainly: ReadonlySet<CollectionName> = new Set(["containers", "openings"]);

function wholeSentence({ id, collection, after }: ElementChange, element: SchemeElement, telling: Telling): string {
  const { nameOf, units } = telling;
  return after === null
    ? actSentence([removalOf(collection, id)], [settingOf(collection, element)], nameOf, units)
    : actSentence([settingOf(collection, element)], [], nameOf, units);
}

function changedTo(before: SchemeElement, after: SchemeElement, change: ElementChange, telling: Telling): string {
  const { units, plain } = telling;
  const stated =
    plain && !toldPlainly.has(change.collection) ? null : changedWords(settled(before, after), after, units);
  const told = [
    wayOf(before, after, units),
    turnOf(before, after),
    typeOf(before, after),
    tagOf(before) === tagOf(after) ? null : `called ${tagOf(before)} before`,
    stated === null ? null : `changed: ${stated}`,
  ].filter((words) => words !== null);
  return told.length === 0 ? "stated otherwise" : told.join(", ");
}

function wayOf(before: SchemeElement, after: SchemeElement, units: UnitSystem): string | null {
  const [from, to] = [placeOf(before), placeOf(after)];
  if (from === null || to === null) return null;
  const by = { xUm: to.xUm - from.xUm, yUm: to.yUm - from.yUm, zUm: to.zUm - from.zUm };
  const still = by.xUm === 0 && by.yUm === 0 && by.zUm === 0;
  return still ? null : `moved ${wayWords(by, (um) => spokenLength(um / 1000, units))}`;
}

/** Where an element lies by itself; null for one that is measured on another, or has two ends. */
function placeOf(element: SchemeElement) {
  if (!("xUm" in element) || "shape" in element) return null;
  const { xUm, yUm } = element;
  if ("zUm" in element) return { xUm, yUm, zUm: element.zUm };
  return { xUm, yUm, zUm: "depthUm" in element ? element.topZUm : 0 };
}

const turnOf = (before: SchemeElement, after: SchemeElement): string | null =>
  "turnMdeg" in before && "turnMdeg" in after && before.turnMdeg !== after.turnMdeg
    ? `turned to ${after.turnMdeg / 1000}°`
    : null;

const typeOf = (before: SchemeElement, after: SchemeElement): string | null =>
  "type" in before && "type" in after && before.type !== after.type
    ? `changed to a ${containerName[after.type]}`
    : null;

/** The element as it was, but where it is now: place and turn are told by themselves. */
function settled(before: SchemeElement, after: SchemeElement): object {
  if (placeOf(after) === null) return before;
  const place = Object.entries(after).filter(([key]) => key in before && placeKeys.has(key));
  return { ...before, ...Object.fromEntries(place.filter(([key]) => key !== "topZUm" || "depthUm" in after)) };
}

const placeKeys: ReadonlySet<string> = new Set(["xUm", "yUm", "zUm", "topZUm", "turnMdeg"]);

/** What has no label of its own is told by what it is stated of. */
function named(element: SchemeElement, did: string, { nameOf }: Telling): ChangeWords {
  const tag = tagOf(element);
  if (tag !== undefined) return { name: tag, did };
  const hostId =
    "elementId" in element ? element.elementId : "containerId" in element ? element.containerId : element.id;
  return { name: `${hostedWords(element)} ${nameOf(hostId)}`, did };
}

const hostedWords = (element: SchemeElement): string => {
  if ("occupancy" in element) return `the use of the ${element.surface} of`;
  if (isFloorLoad(element)) return `the ${element.case} load on the ${element.surface} of`;
  return "the stated steel of";
};

const split = (sentence: string, tag: string | undefined): ChangeWords =>
  tag !== undefined && sentence.startsWith(`${tag} `)
    ? { name: tag, did: sentence.slice(tag.length + 1) }
    : { name: "", did: sentence };
