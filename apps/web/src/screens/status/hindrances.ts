import type { ChangeRequest, Mark, Scheme, UnitSystem, Verdict } from "@cornerway/schema";
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

/** What stands in the way: what does not work, what the engineer asks for, and that no strength is checked. */
export function hindrances(given: {
  marks: readonly Mark[];
  requests: readonly ChangeRequest[];
  scheme: Scheme | null;
  revision: string | null;
  units: UnitSystem;
}): Hindrance[] {
  const { scheme, marks, requests, revision, units } = given;
  if (scheme === null) return [];
  const broken = marks.filter(({ verdict }) => verdict === "does not work");
  const asked = requests.filter(({ state, revision: on }) => state === "open" && on === revision);
  return [
    ...broken.slice(0, mostTold).map((mark) => brokenHindrance(mark, scheme, units)),
    ...(broken.length > mostTold ? [more(broken.length - mostTold)] : []),
    ...asked.map(askedHindrance),
    strength(marks),
  ];
}

const brokenHindrance = (mark: Mark, scheme: Scheme, units: UnitSystem): Hindrance => ({
  id: mark.id,
  heading: "This does not work yet",
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

/** Until strengths are computed nothing can be approved, however well it stands. */
function strength(marks: readonly Mark[]): Hindrance {
  const open = marks.filter(({ verdict }) => verdict === "not checked" || verdict === "needs the engineer").length;
  return {
    id: "strength",
    heading: "No strength is checked yet",
    sentence: `Only the way of the load is drawn so far. ${open === 0 ? "Nothing" : open === 1 ? "One place" : `${open} places`} beyond that still ${open === 1 ? "waits" : "wait"} for an answer.`,
    who: "The engineer answers",
    verdict: "not checked",
    mark: null,
  };
}
