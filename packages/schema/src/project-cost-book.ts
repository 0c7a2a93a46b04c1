import { z } from "zod";
import { CostBook } from "./cost-book.ts";
import { Digest } from "./ids.ts";
import { Author, Moment } from "./review.ts";

/**
 * The cost book of a project. Number 0 is the book for show that every project begins with; each change is the next
 * number, and the record keeps them all. The entity tag of the book is its digest.
 */
export const ProjectCostBook = z
  .strictObject({
    number: z.int().min(0),
    book: CostBook,
    digest: Digest,
    /** Null while nobody has changed it. */
    changed: z.strictObject({ by: Author, at: Moment }).nullable(),
  })
  .meta({ id: "ProjectCostBook" });
export type ProjectCostBook = z.infer<typeof ProjectCostBook>;
