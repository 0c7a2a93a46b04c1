import { digestOf } from "./canonical.ts";
import type { Acting, StepRefusal } from "./follow-question.ts";
import type { Digest } from "./ids.ts";
import { mayDo, type Act, type Role } from "./roles.ts";
import { elementById, referencesOf } from "./scheme-collections.ts";
import type { Scheme } from "./scheme.ts";
import type { BuiltState, SiteItem, SiteItemKind, SiteItemNow, SiteItemState, SiteWord } from "./site-item.ts";

/** The act that each word is. */
export const siteActs = {
  built: "close-site-item",
  differs: "close-site-item",
  missing: "close-site-item",
  accepted: "judge-site-item",
  "to mend": "judge-site-item",
  reopened: "judge-site-item",
} as const satisfies Record<SiteWord["says"], Act>;

/** Welds and hold points are the engineer's to look at: they cannot be seen once the work goes on. */
const looksAt: Partial<Record<SiteItemKind, readonly Role[]>> = { weld: ["engineer"], "hold point": ["engineer"] };

export const siteClosers = (kind: SiteItemKind): readonly Role[] => looksAt[kind] ?? mayDo["close-site-item"];

const stateAfter: Record<SiteWord["says"], SiteItemState> = {
  ...{ built: "built", differs: "differs", missing: "missing", accepted: "accepted" },
  ...{ "to mend": "to mend", reopened: "open" },
};

/** Of the words on one item, that which is drawn so now. Null where none is. */
export const lastWordOf = (words: readonly SiteWord[], drawnDigest: Digest): SiteWord | undefined =>
  words.findLast((word) => word.drawnDigest === drawnDigest);

export function siteItemState(words: readonly SiteWord[], drawnDigest: Digest): SiteItemState {
  const last = lastWordOf(words, drawnDigest);
  return last === undefined ? "open" : stateAfter[last.says];
}

const mayFollow: Record<SiteWord["says"], readonly SiteItemState[]> = {
  built: ["open", "differs", "missing", "to mend"],
  differs: ["open", "missing", "to mend"],
  missing: ["open", "to mend"],
  accepted: ["differs"],
  "to mend": ["differs"],
  reopened: ["built", "accepted"],
};

/**
 * Why someone may not say a word on an item; undefined when they may. What is closed stays closed until the engineer opens it
 * again, and whoever stated that something differs never accepts it.
 */
export function refuseSiteWord(
  kind: SiteItemKind,
  last: SiteWord | undefined,
  says: SiteWord["says"],
  by: Acting,
): StepRefusal | undefined {
  const roles = siteActs[says] === "close-site-item" ? siteClosers(kind) : mayDo["judge-site-item"];
  if (!roles.includes(by.role))
    return { code: "closer-refused", detail: `the ${roles.join(" or the ")} says that of a ${kind}` };
  const state = last === undefined ? "open" : stateAfter[last.says];
  if (!mayFollow[says].includes(state)) return { code: "step-refused", detail: `the ${kind} is ${state}` };
  if (says === "accepted" && last?.author.id === by.id)
    return { code: "closer-refused", detail: "whoever stated that it differs does not accept it" };
  return undefined;
}

/** Digest of an element as a scheme draws it, with what it hangs on. Undefined where it is not drawn. */
export function drawnDigestOf(scheme: Scheme, elementId: string): Digest | undefined {
  const element = elementById(scheme, elementId);
  if (element === undefined) return undefined;
  const under = referencesOf(element).map(({ id }) => elementById(scheme, id) ?? null);
  return digestOf([element, ...under]);
}

const waits: Record<SiteItemState, (kind: SiteItemKind) => readonly Role[] | null> = {
  open: siteClosers,
  "to mend": siteClosers,
  missing: siteClosers,
  differs: () => mayDo["judge-site-item"],
  built: () => null,
  accepted: () => null,
};

/** The items of a scheme as they stand by all that was said of them. */
export function siteItemsNow(scheme: Scheme, items: readonly SiteItem[], words: readonly SiteWord[]): SiteItemNow[] {
  const byKey = new Map<string, SiteWord[]>();
  for (const word of words) byKey.set(word.key, [...(byKey.get(word.key) ?? []), word]);
  return items.map((item) => {
    const own = byKey.get(item.key) ?? [];
    const drawn = drawnDigestOf(scheme, item.elementId) ?? "";
    const state = siteItemState(own, drawn);
    const waitsFor = waits[state](item.kind);
    return {
      ...{ item, state, words: own, waitsFor: waitsFor === null ? null : [...waitsFor] },
      drawnOtherwise: own.length > 0 && lastWordOf(own, drawn) === undefined,
    };
  });
}

const asDrawn: ReadonlySet<SiteItemState> = new Set(["built"]);
const underWay: ReadonlySet<SiteItemState> = new Set(["open"]);

/** A revision is built as drawn once every item is; one that stands otherwise, or is not there, is enough that it is not. */
export function builtState(items: readonly Pick<SiteItemNow, "state">[]): BuiltState {
  if (items.some(({ state }) => !asDrawn.has(state) && !underWay.has(state))) return "not built as drawn";
  return items.every(({ state }) => asDrawn.has(state)) ? "as drawn" : "being built";
}

/** Elements that do not stand as this scheme draws them, with no word of the engineer that they may. */
export const standsOtherwise = (items: readonly SiteItemNow[]): string[] => [
  ...new Set(
    items
      .filter(({ state }) => state === "differs" || state === "missing" || state === "to mend")
      .map(({ item }) => item.elementId),
  ),
];
