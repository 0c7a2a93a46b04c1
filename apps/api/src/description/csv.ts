import { stringify } from "csv-stringify/sync";
import type { FastifyReply } from "fastify";

export type Cell = string | number | null;

/**
 * A table as RFC 4180 has it. Text that begins as a formula does is led by an apostrophe, so that a spreadsheet shows it
 * and does not reckon it; numbers stay as they are.
 */
export const csvOf = (head: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  stringify([head, ...rows], { record_delimiter: "windows", escape_formulas: true });

export const sendCsv = (reply: FastifyReply, name: string, text: string): FastifyReply =>
  reply
    .header("content-disposition", `attachment; filename="${name}"`)
    .type("text/csv; charset=utf-8; header=present")
    .send(text);
