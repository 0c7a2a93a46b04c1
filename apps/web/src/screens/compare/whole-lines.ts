import type { Pair, Revision, SchemeComparison, Site, UnitSystem } from "@cornerway/schema";
import { siteId } from "../../drawing/compare/site-places.ts";
import { spokenLength } from "../../units/drawn-length.ts";
import { changedWords } from "../../wording/changed-words.ts";
import { listOf } from "../../wording/list-of.ts";
import { eachSide, type ComparedLine } from "./compared-lines.ts";

/** What changed of the site and of the design basis: no place on a view, and the verdict of the whole building. */
export function wholeLines(
  { site, basis }: SchemeComparison,
  revisions: Pair<Revision>,
  units: UnitSystem,
  plain: boolean,
): ComparedLine[] {
  const sentences = [
    { id: siteId, sentence: site === null ? null : `The site is stated otherwise: ${siteWords(site, units)}.` },
    { id: "basis", sentence: basis === null ? null : basisSentence(basis, units, plain) },
  ];
  const unknown = { before: null, after: null };
  return sentences.flatMap(({ id, sentence }) =>
    sentence === null
      ? []
      : [
          {
            ...{ ids: [id], sentence, there: { before: true, after: true }, forceKn: unknown, money: unknown },
            verdict: eachSide(revisions, ({ verdict }) => verdict),
          },
        ],
  );
}

function siteWords({ before, after }: Pair<Site>, units: UnitSystem): string {
  const told = [
    before.edition === after.edition ? null : `code edition ${after.edition}`,
    before.groundZUm === after.groundZUm ? null : `ground at ${spokenLength(after.groundZUm / 1000, units)}`,
    before.northMdeg === after.northMdeg ? null : `north at ${after.northMdeg / 1000}°`,
  ];
  return listOf(told.filter((words) => words !== null));
}

function basisSentence({ before, after }: Pair<object>, units: UnitSystem, plain: boolean): string {
  const words = plain ? null : changedWords(before, after, units);
  return `The design basis is stated otherwise${words === null ? "" : `: ${words}`}.`;
}
