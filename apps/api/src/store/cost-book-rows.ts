import { Author, demoCostBook, digestOf, KeptCostBook, withEveryRate, type ProjectCostBook } from "@cornerway/schema";
import type { CostBook as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

const bookForShow: ProjectCostBook = { number: 0, book: demoCostBook, digest: digestOf(demoCostBook), changed: null };

/** The cost book of a project as it is now. */
export async function readCostBook(db: Connection, projectId: string): Promise<ProjectCostBook> {
  const row = await db.costBook.findFirst({ where: { projectId }, orderBy: { number: "desc" } });
  return row === null ? bookForShow : bookOf(row);
}

export type CostBookRow = Pick<ProjectCostBook, "number" | "book" | "digest"> & { author: Author; changedAt: string };

export async function insertCostBook(tx: Connection, projectId: string, row: CostBookRow): Promise<void> {
  await tx.costBook.create({ data: { projectId, ...row } });
}

const bookOf = ({ number, book, digest, author, changedAt }: Row): ProjectCostBook => ({
  number,
  book: withEveryRate(KeptCostBook.parse(book)),
  digest,
  changed: { by: Author.parse(author), at: changedAt.toISOString() },
});
