import { parse } from "csv-parse/sync";
import type { BringInComments } from "@cornerway/schema";
import { z } from "zod";

/** A comment as it stands on the sheet that came. */
export interface ReadComment {
  number: string;
  discipline: string | null;
  text: string;
  about: string | null;
}

export type ReadComments = { ok: true; comments: ReadComment[] } | { ok: false; why: string };

const longest = 8000;

/** The comments of a sheet, each once and whole, or where and why it cannot be read. */
export function parseComments({ form, text }: Pick<BringInComments, "form" | "text">): ReadComments {
  const read = form === "csv" ? fromCsv(text) : fromLines(text);
  if (!read.ok) return read;
  const { comments } = read;
  if (comments.length === 0) return { ok: false, why: "there is no comment in it" };
  const long = comments.find((comment) => comment.text.length > longest);
  if (long !== undefined) return { ok: false, why: `comment ${long.number} is longer than ${longest} signs` };
  const doubled = comments.find(({ number }, at) => comments.findIndex((each) => each.number === number) !== at);
  if (doubled !== undefined) return { ok: false, why: `number ${doubled.number} comes twice; give each its own` };
  return read;
}

const Rows = z.array(z.array(z.string()));

/** Heads that a column may go by, in any case. */
const heads = {
  number: /^(no\.?|nr\.?|number|item|item no\.?|comment no\.?|#)$/i,
  discipline: /^(discipline|department|trade|review)$/i,
  text: /^(comment|comments|text|remark|description|correction)$/i,
  about: /^(sheet|page|reference|location|about)$/i,
} as const;

/** RFC 4180 with a heading row. */
function fromCsv(text: string): ReadComments {
  let rows: string[][];
  try {
    rows = Rows.parse(parse(text, { bom: true, relax_column_count: true, skip_empty_lines: true, trim: true }));
  } catch (error) {
    return { ok: false, why: `this is not CSV: ${error instanceof Error ? error.message : String(error)}` };
  }
  const [head = [], ...body] = rows;
  const at = (name: keyof typeof heads) => head.findIndex((cell) => heads[name].test(cell));
  const [number, words, discipline, about] = [at("number"), at("text"), at("discipline"), at("about")];
  if (number < 0 || words < 0)
    return {
      ok: false,
      why: `the first row must name a column “number” and a column “comment”; it says ${head.join(", ")}`,
    };
  const cell = (row: readonly string[], place: number) => (place < 0 ? "" : (row[place] ?? ""));
  const comments: ReadComment[] = [];
  for (const [line, row] of body.entries()) {
    const read = {
      number: cell(row, number),
      text: cell(row, words),
      discipline: cell(row, discipline) || null,
      about: cell(row, about) || null,
    };
    if (read.number === "" || read.text === "")
      return { ok: false, why: `row ${line + 2} has no ${read.number === "" ? "number" : "comment"}` };
    comments.push(read);
  }
  return { ok: true, comments };
}

/** `12. Comment`, `S-3) Comment`, `4: Comment`; lines without a number go on with the comment before. */
const numbered = /^\s*((?:[A-Za-z]{1,3}[-.]?)?\d{1,4}(?:\.\d{1,3})?[a-z]?)\s*[.):\t]\s*(\S.*)$/;

function fromLines(text: string): ReadComments {
  const comments: ReadComment[] = [];
  for (const [at, line] of text.split(/\r?\n/).entries()) {
    const [, number, words] = numbered.exec(line) ?? [];
    if (number !== undefined && words !== undefined) {
      comments.push({ number, text: words.trim(), discipline: null, about: null });
      continue;
    }
    const last = comments.at(-1);
    if (line.trim() === "") continue;
    if (last === undefined)
      return { ok: false, why: `line ${at + 1} stands before the first number; begin with a number such as “1. ”` };
    last.text += `\n${line.trim()}`;
  }
  return { ok: true, comments };
}
