import { certainties, Certainty } from "@cornerway/schema";
import { z } from "zod";

const Row = z.object({
  id: z.string(),
  what: z.string(),
  source: z.string(),
  certainty: Certainty,
  reference: z.number(),
  ours: z.number(),
  unit: z.string(),
  relative: z.number().nullable(),
  within: z.boolean(),
  departs: z.string().optional(),
});
export type ManualRow = z.infer<typeof Row>;

const Family = z.object({ id: z.string(), title: z.string(), about: z.string(), rows: z.array(Row) });
export type ManualFamily = z.infer<typeof Family>;

/** The manual the engine's tests write: each value against its source. */
export const Manual = z.object({ engineVersion: z.string(), families: z.array(Family) });
export type Manual = z.infer<typeof Manual>;

/** Read when it is asked for: it is long, and most pages never show it. */
export async function fetchManual(): Promise<Manual> {
  const { default: manual } = await import("../../../../../shared/verification/manual.json");
  return Manual.parse(manual);
}

/** Rows of each certainty, and how many of them are within what was allowed. */
export const countsOf = (rows: readonly Pick<ManualRow, "certainty" | "within">[]) =>
  certainties.map((certainty) => {
    const of = rows.filter((row) => row.certainty === certainty);
    return { certainty, cases: of.length, within: of.filter(({ within }) => within).length };
  });
