import { digestOf, type CostBook, type ProjectCostBook } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import { insertCostBook, readCostBook } from "../store/cost-book-rows.ts";
import type { Database } from "../store/database.ts";
import { actOf } from "./act-of.ts";
import { authorOf, type Part } from "./part.ts";

/**
 * Writes the next cost book of a project. `isFor` tells whether the sender meant to change the book of a digest. What is
 * there already is done already, so that an answer that was lost can be asked for again.
 */
export async function changeCostBook(
  database: Database,
  sender: Part,
  book: CostBook,
  isFor: (digest: string) => boolean,
): Promise<Outcome<ProjectCostBook>> {
  const { projectId } = sender;
  const digest = digestOf(book);
  return actOf(database, sender, "keep-cost-book", async (tx, part) => {
    const before = await readCostBook(tx, projectId);
    if (before.digest === digest) return done(before);
    if (!isFor(before.digest))
      return refuse("book-moved-on", { detail: `the cost book is number ${before.number} now` });
    const author = authorOf(part, "keep-cost-book");
    const number = before.number + 1;
    const { at } = await append(tx, projectId, author, () => ({ kind: "cost book changed", number, digest, book }));
    await insertCostBook(tx, projectId, { number, book, digest, author, changedAt: at });
    return done({ number, book, digest, changed: { by: author, at } });
  });
}
