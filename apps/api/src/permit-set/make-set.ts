import { catalogRows, schemeModel } from "@cornerway/engine";
import { contentDigest, digestOf, resultDigest } from "@cornerway/schema";
import { calculationPages } from "./calculations/calculations.ts";
import { disagreements, disagreementText } from "./cross-check.ts";
import { derive } from "./derived.ts";
import type { Sheet } from "./figure.ts";
import { numberPages } from "./paper/number-pages.ts";
import { templateVersion, type PermitSet } from "./permit-set.ts";
import type { SetSource } from "./set-source.ts";
import { coverSheet } from "./sheets/cover-sheet.ts";
import { cutPlanSheets } from "./sheets/cut-plan-sheets.ts";
import { detailSheets } from "./sheets/detail-sheets.ts";
import { elevationSheets } from "./sheets/elevation-sheets.ts";
import { foundationSheet } from "./sheets/foundation-sheet.ts";
import { loadPathSheets } from "./sheets/load-path-sheets.ts";
import { modelSheet } from "./sheets/model-sheet.ts";
import { notesSheet } from "./sheets/notes-sheet.ts";
import { planSheets } from "./sheets/plan-sheets.ts";
import { recordSheets } from "./sheets/record-sheets.ts";
import { scheduleSheets } from "./sheets/schedule-sheets.ts";
import { sectionSheet } from "./sheets/section-sheet.ts";
import { solvedPathSheets } from "./sheets/solved-path-sheet.ts";
import { solve } from "./solved.ts";

/** The set, or why none is printed: it is not one revision, or a number that its drawings, schedules and calculations do not tell alike. */
export type MadeSet = { ok: true; set: PermitSet } | { ok: false; why: string[] };

/** One revision object: its digests are those of the very scheme, catalogue, assessment and proof that are printed. */
function notOneRevision({ scheme, revision, assessment, proof, ...source }: SetSource): string[] {
  const content = contentDigest(scheme, digestOf(catalogRows));
  const result = resultDigest(content, assessment, proof ?? undefined);
  return [
    ...(content === revision.contentDigest
      ? []
      : [
          `revision ${revision.letter} was sent on content ${revision.contentDigest}; what would be drawn is ${content}`,
        ]),
    ...(result === source.resultDigest
      ? []
      : [`the assessment recorded is ${source.resultDigest}; what would be calculated is ${result}`]),
  ];
}

/** Makes the set of one revision. Pure: the same source gives the same set. */
export function makeSet(source: SetSource): MadeSet {
  const other = notOneRevision(source);
  if (other.length > 0) return { ok: false, why: other };
  const derived = derive(source);
  const model = schemeModel(source.scheme);
  const solved = solve(source);
  const drawings: Sheet[] = [
    notesSheet(source, derived),
    ...planSheets(source, derived),
    ...elevationSheets(source, derived),
    sectionSheet(source, derived),
    ...loadPathSheets(source, derived),
    ...solvedPathSheets(source, derived, solved),
    ...cutPlanSheets(source, derived),
    ...scheduleSheets(source, derived),
    foundationSheet(source, derived, solved),
    modelSheet(source, model),
    ...detailSheets(source),
  ];
  const cover = 1;
  const calculations = calculationPages(source, derived, model, solved, cover + drawings.length + 1);
  const record = recordSheets(source);
  const apart = disagreements([...drawings.flatMap(({ figures }) => figures), ...calculations.figures]);
  if (apart.length > 0) return { ok: false, why: apart.map(disagreementText) };
  const others = [...drawings.map(({ page }) => page), ...calculations.pages, ...record.map(({ page }) => page)];
  const pages = numberPages([coverSheet(source, derived, others), ...others]);
  const title = `${source.project.name}, structural permit set, revision ${source.revision.letter}`;
  return { ok: true, set: { templateVersion, title, at: source.record.at, pages } };
}
