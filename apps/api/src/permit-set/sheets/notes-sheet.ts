import { cautions } from "@cornerway/schema";
import { criteriaRows } from "../calculations/criteria.ts";
import { holdPoints } from "../calculations/erection.ts";
import type { Derived } from "../derived.ts";
import type { Sheet } from "../figure.ts";
import { changeWords } from "../change-words.ts";
import { fact, heading, numbered, prose, wholeColumn, type ColumnItem } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import type { Block } from "../paper/ink.ts";
import { text, type Box } from "../paper/shapes.ts";
import { day } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";

/** General notes and cautions, the design data of the code, hold points, and the revision table. */
export function notesSheet(source: SetSource, derived: Derived): Sheet {
  const { field, column } = sheetRoom(source);
  const page = drawingSheet(source, { number: "S0.1", title: "General notes", chapter: "Cover and notes" }, [
    { role: "H1", inks: [text(field.x, field.y + 26, "General notes and design data", { face: "prose", size: 26 })] },
    ...inColumns(columns(source, derived), { ...field, y: field.y + 44, height: field.height - 44 }),
    ...wholeColumn(revisionTable(source), column),
  ]);
  return { page, figures: [] };
}

/** What each of the three columns says. */
const columns = (source: SetSource, derived: Derived): ColumnItem[][] => [
  [
    heading("Cautions"),
    ...cautions.map((words, at) => numbered(`${at + 1}`, words)),
    heading("General notes"),
    ...generalNotes.map((words, at) => numbered(`N${at + 1}`, words)),
  ],
  [
    heading("Hold points"),
    ...holdPoints(source, derived).map(([words, who], at) => numbered(`H${at + 1}`, `${words} (${who}).`)),
  ],
  [heading("Design data"), ...criteriaRows(source).map(([name = "", value = ""]) => fact(name, value))],
];

/** Common practice, no published source. */
const generalNotes = [
  "These sheets are one set. A sheet by itself, or one whose digest is not that of the cover, is no part of it.",
  "Drawn and scheduled sizes agree by one source. Where site and sheet differ, work stops and the engineer is asked; nothing is scaled off a print.",
  "No wall, rail, post, cross member, header, sill or roof of a container is cut, drilled, heated, moved or loaded that is not drawn so here.",
  "Container steel is thin and of unknown grade until tested. Weld to it only after its grade, thickness and coating are known; coatings are taken off where welds go and made good after.",
  "Loads come down on corner fittings, on seats and on posts that are drawn. Nothing is set down on a roof sheet or between fittings.",
  "Edges that are cut are ground free of notches, primed and sealed; crevices between units are closed against water.",
  "Added posts stand on footings of their own and are anchored before they are loaded.",
  "Locks are closed and connections made storey by storey, before the next container is set down.",
];

function revisionTable(source: SetSource): ColumnItem[] {
  const { revisions } = source;
  const latest = revisions.toReversed();
  const shown = latest.slice(0, 8);
  return [
    heading("Revisions"),
    ...shown.map(({ letter, sentAt, sentBy, remark }) =>
      fact(`${letter} · ${day(sentAt)}`, `${sentBy}${remark === null ? "" : `: ${remark.slice(0, 220)}`}`),
    ),
    ...(latest.length > shown.length
      ? [fact("Earlier", `${latest.length - shown.length} revisions, in the record`)]
      : []),
    ...changeWords(source).map(prose),
    heading("Signs"),
    fact("Circle", "grid line"),
    fact("Hexagon", "opening, post, seat, beam, tie or pad"),
    fact("Small circle", "note"),
    fact("Solid", "corner fitting, container post"),
    fact("Paired hatch", "added steel"),
    fact("Stipple", "concrete"),
  ];
}

function inColumns(lists: readonly ColumnItem[][], field: Box): Block[] {
  const gap = 26;
  const width = (field.width - (lists.length - 1) * gap) / lists.length;
  return lists.flatMap((list, at) =>
    wholeColumn(list, { x: field.x + at * (width + gap), y: field.y, width, height: field.height }),
  );
}
