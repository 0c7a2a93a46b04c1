import { CalculationFlow } from "../paper/calculation-flow.ts";
import type { Page } from "../paper/page.ts";
import type { SetSource } from "../set-source.ts";

/** The calculations subject by subject with the pages they stand on; `firstPage` is the place of this page in the set. */
export function indexPages(source: SetSource, pages: readonly Page[], firstPage: number): Page[] {
  const flow = new CalculationFlow(source, "Calculations", 0);
  flow.subject("Index of the calculations");
  flow.paragraph(
    "Each subject begins on a page of its own. Every page carries the revision, the digest of the page and of the set. What a number rests on is said where it is used: published, derived, from memory, or common practice.",
  );
  flow.table({
    name: "Index of the calculations",
    columns: [
      { heading: "Subject", share: 60 },
      { heading: "Pages", share: 22 },
      { heading: "Page of the set", share: 18, right: true },
    ],
    size: 9,
    rows: subjectsOf(pages).map(({ title, first, last, at }) => [
      title,
      first === last ? first : `${first} to ${last}`,
      String(firstPage + 1 + at),
    ]),
  });
  return flow.pages;
}

type Subject = { title: string; first: string; last: string; at: number };

/** Pages that follow one another under one title. */
function subjectsOf(pages: readonly Page[]): Subject[] {
  const subjects: Subject[] = [];
  for (const [at, { title, number }] of pages.entries()) {
    const last = subjects.at(-1);
    if (last?.title === title) last.last = number;
    else subjects.push({ title, first: number, last: number, at });
  }
  return subjects;
}
