import {
  elementNames,
  type Assessment,
  type ChangeRequest,
  type Mark,
  type Scheme,
  type UnitSystem,
  type Verdict,
} from "@cornerway/schema";
import { markWords } from "../../wording/mark-words.ts";

/** One thing between this revision and the next step, in the owner's words. */
export interface Hindrance {
  id: string;
  heading: string;
  sentence: string;
  who: string;
  verdict: Verdict | "request";
  mark: Mark | null;
}

const mostTold = 4;

/** What stands in the way: what does not work, what the engineer asks for, and what of its strength is not answered. */
export function hindrances(given: {
  marks: readonly Mark[];
  /** What was judged; null while it is not. */
  scope: Assessment["scope"] | null;
  requests: readonly ChangeRequest[];
  scheme: Scheme | null;
  revision: string | null;
  units: UnitSystem;
}): Hindrance[] {
  const { scheme, marks, requests, revision, units, scope } = given;
  if (scheme === null) return [];
  const broken = marks.filter(({ verdict }) => verdict === "does not work");
  const names = elementNames(scheme);
  const asked = requests.filter(({ state, revision: on }) => state === "open" && on === revision);
  return [
    ...broken.slice(0, mostTold).map((mark) => brokenHindrance(mark, scheme, names, units)),
    ...(broken.length > mostTold ? [more(broken.length - mostTold)] : []),
    ...asked.map(askedHindrance),
    ...strength(marks, scope),
  ];
}

const brokenHindrance = (
  mark: Mark,
  scheme: Scheme,
  names: ReadonlyMap<string, string>,
  units: UnitSystem,
): Hindrance => ({
  id: mark.id,
  heading: `${names.get(mark.elements[0] ?? "") ?? "This"} does not work yet`,
  sentence: markWords(mark, scheme, "owner", units).body,
  who: "The architect draws it anew",
  verdict: "does not work",
  mark,
});

const more = (count: number): Hindrance => ({
  id: "more",
  heading: `${count} more like these`,
  sentence: "They are listed on the review sheet.",
  who: "The architect draws them anew",
  verdict: "does not work",
  mark: null,
});

const askedHindrance = ({ id, number, text, author }: ChangeRequest): Hindrance => ({
  id,
  heading: `Change request ${number} is open`,
  sentence: text,
  who: `${author.name} asks, the architect answers`,
  verdict: "request",
  mark: null,
});

/** What of its strength is not answered, and who answers. */
function strength(marks: readonly Mark[], scope: Assessment["scope"] | null): Hindrance[] {
  const open = marks.filter(({ verdict }) => verdict === "not checked" || verdict === "needs the engineer").length;
  const places = open === 1 ? "One place" : `${open} places`;
  const common = { id: "strength", verdict: "not checked", mark: null } as const;
  switch (scope) {
    case null:
    case "load path only, no strength checked":
      return [
        {
          ...common,
          heading: "No strength is checked yet",
          sentence: "Only the way of the load is drawn so far.",
          who: "The engineer answers",
        },
      ];
    case "load path, and strength under gravity loads":
      return [
        {
          ...common,
          heading: "Wind, snow and earthquake are not looked at yet",
          sentence: `What it carries was checked, not yet what the place asks of it.${open === 0 ? "" : ` ${places} ${open === 1 ? "waits" : "wait"} for an answer.`}`,
          who: "The architect states the place, then the engineer answers",
        },
      ];
    case "load path, and strength under all loads":
      if (open === 0) return [];
      return [
        {
          ...common,
          verdict: "needs the engineer",
          heading: `${places} ${open === 1 ? "needs" : "need"} the engineer`,
          sentence: "The check alone does not settle them. Nothing is wrong there yet.",
          who: "The engineer answers",
        },
      ];
  }
}
