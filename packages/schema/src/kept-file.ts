import { z } from "zod";
import { Digest, FileId } from "./ids.ts";
import { Author, Moment } from "./review.ts";
import { personLine } from "./text.ts";

/** Largest file that is kept, bytes. Common practice for e-mailed sets, no published source. */
export const largestFileBytes = 20 * 1024 * 1024;

/**
 * All kept files of a project together, bytes: some three hundred photos. Below what an archive holds, so that every project can be
 * kept as one and brought back.
 */
export const mostKeptBytes = 256 * 1024 * 1024;

/** What is kept, each known by its content. */
export const keptMediaTypes = ["application/pdf", "image/jpeg", "image/png"] as const;

/** More than any camera of a phone makes; a picture of more is refused before it is read out. Common practice, no published source. */
export const mostPhotoPixels = 60_000_000;

/** A photo is kept at no more than this along its longer side. */
export const longestPhotoSidePx = 2400;

/** Photos with one act. */
export const mostPhotos = 12;

export const FileName = personLine(200);

/**
 * A kept file; `digest` is the SHA-256 of its bytes. A PDF is as it came. A photo is drawn anew from what came, without its
 * position, its camera and whatever else was written beside the picture.
 */
export const KeptFile = z
  .strictObject({
    id: FileId,
    name: FileName,
    mediaType: z.enum(keptMediaTypes),
    digest: Digest,
    sizeBytes: z.int().min(1).max(largestFileBytes),
    author: Author,
    keptAt: Moment,
  })
  .meta({ id: "KeptFile" });
export type KeptFile = z.infer<typeof KeptFile>;
