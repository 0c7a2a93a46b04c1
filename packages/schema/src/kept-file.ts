import { z } from "zod";
import { Digest, FileId } from "./ids.ts";
import { Author, Moment } from "./review.ts";
import { personLine } from "./text.ts";

/** Largest file that is kept, bytes. Common practice for e-mailed sets, no published source. */
export const largestFileBytes = 20 * 1024 * 1024;

export const FileName = personLine(200);

/** A file as it came: its bytes are never touched, and `digest` is their SHA-256. */
export const KeptFile = z
  .strictObject({
    id: FileId,
    name: FileName,
    mediaType: z.literal("application/pdf"),
    digest: Digest,
    sizeBytes: z.int().min(1).max(largestFileBytes),
    author: Author,
    keptAt: Moment,
  })
  .meta({ id: "KeptFile" });
export type KeptFile = z.infer<typeof KeptFile>;
