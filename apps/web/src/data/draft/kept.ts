import { DraftAct, Problem } from "@cornerway/schema";
import { z } from "zod";

const KeptAct = z.strictObject({
  id: DraftAct.shape.id,
  operations: DraftAct.shape.operations,
  undoes: DraftAct.shape.id.nullable(),
  base: z.int().min(0).nullable(),
  acknowledged: z.int().nullable(),
});

/** What outlives the page: acts the service has not taken in, and those set aside until mine or theirs is chosen. */
export const Kept = z.strictObject({
  pending: z.array(KeptAct),
  conflicts: z.array(
    z.strictObject({
      act: KeptAct,
      elements: z.array(z.string()),
      theirs: Problem.shape.conflict.unwrap().shape.theirs,
      why: z.string().nullable(),
    }),
  ),
});
export type Kept = z.infer<typeof Kept>;

export const nothingKept: Kept = { pending: [], conflicts: [] };

/** How many moves are here and nowhere else. */
export const unsentIn = ({ pending, conflicts }: Kept): number =>
  pending.filter(({ acknowledged }) => acknowledged === null).length + conflicts.length;
