import type { Standing } from "@cornerway/schema";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";

/** For which revision a judgement was given, and whether it still stands: "Given for revision A. In revision B G1 and its bearings are others." */
export function standingSentence({ state, revision, newest, changed }: Standing, nameOf: NameOf): string {
  const given = `Given for revision ${revision}`;
  if (state === "waits") return `${given}. Revision ${newest} is not checked yet.`;
  if (state === "stands")
    return revision === newest ? `${given}.` : `${given}. Up to revision ${newest} nothing it covers has changed.`;
  const results = changed.results.length === 0 ? [] : [`what was found of it (${listOf(changed.results)})`];
  const what = [...changed.elements.map(nameOf), ...results, ...changed.whole.map((each) => wholeWords[each])];
  const { found = [] } = changed;
  const changes = what.length === 0 ? "" : ` Revision ${newest} changes ${listOf(what)}.`;
  const otherwise =
    found.length === 0
      ? ""
      : ` Survey or site have found ${listOf(found.map(nameOf))} otherwise than revision ${newest} draws it.`;
  return `${given}.${changes}${otherwise}`;
}

const wholeWords: Record<Standing["changed"]["whole"][number], string> = {
  "site and code edition": "the site or the code edition",
  "design basis": "the design basis",
  "engine version": "the engine that judges it",
  "result cannot be read": "a result that can no longer be read",
};
