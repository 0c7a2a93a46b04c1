import { z } from "zod";
import { Digest, DispositionId, FileId } from "./ids.ts";
import { Author, MarkId, Moment, RevisionLetter } from "./review.ts";
import { Standing } from "./standing.ts";
import { personText } from "./text.ts";

const disposed = {
  id: DispositionId,
  revision: RevisionLetter,
  contentDigest: Digest,
  resultDigest: Digest,
  markId: MarkId,
  /** Why the mark does not stand in the way of sealing. */
  reason: personText(4000),
  /** The engineer's own calculation: a kept file, with the digest of its bytes. */
  calculation: z.strictObject({ fileId: FileId, digest: Digest }),
};

export const NewMarkDisposition = z.strictObject(disposed).meta({ id: "NewMarkDisposition" });
export type NewMarkDisposition = z.infer<typeof NewMarkDisposition>;

/**
 * The engineer's own word on one mark, beside what the engine says and never in its place: both are printed. `markDigest` is
 * the digest of the mark as it was.
 */
export const MarkDisposition = z
  .strictObject({ ...disposed, number: z.int().min(1), markDigest: Digest, author: Author, disposedAt: Moment })
  .meta({ id: "MarkDisposition" });
export type MarkDisposition = z.infer<typeof MarkDisposition>;

/** `stands` is false once the mark, what it covers or its calculation's ground has changed. */
export const MarkDispositionNow = z
  .strictObject({ disposition: MarkDisposition, stands: z.boolean(), standing: Standing })
  .meta({ id: "MarkDispositionNow" });
export type MarkDispositionNow = z.infer<typeof MarkDispositionNow>;
