import { z } from "zod";
import { Digest, ProjectId } from "./ids.ts";
import { RecordKey, Signature, SignedHead } from "./record-bundle.ts";
import { Moment } from "./review.ts";

/** A file of an archive by its name in it. */
export const ArchivedFile = z
  .strictObject({ name: z.string().min(1).max(200), bytes: z.int().min(0), digest: Digest })
  .meta({ id: "ArchivedFile" });
export type ArchivedFile = z.infer<typeof ArchivedFile>;

/**
 * What `archive.json` of a project's archive says: whose it is, every other file with its SHA-256, and the head of the
 * record, signed as a whole by the key of the service that made it. A later version reads every number it knows.
 */
export const ProjectArchive = z
  .strictObject({
    archive: z.literal(1),
    project: z.strictObject({
      ...{ id: ProjectId, name: z.string(), place: z.string(), client: z.string(), openedAt: Moment },
    }),
    madeAt: Moment,
    engineVersion: z.string(),
    files: z.array(ArchivedFile),
    keys: z.array(RecordKey).min(1),
    head: SignedHead,
    /** By the key of the head, over everything above. */
    signature: Signature,
  })
  .meta({ id: "ProjectArchive" });
export type ProjectArchive = z.infer<typeof ProjectArchive>;

/**
 * From where the record up to an entry came: the head as the service that made it signed it, with its keys. Nobody else
 * signs a head of that part.
 */
export const BroughtIn = z
  .strictObject({ upTo: z.int().min(1), head: SignedHead, keys: z.array(RecordKey).min(1), archiveDigest: Digest })
  .meta({ id: "BroughtIn" });
export type BroughtIn = z.infer<typeof BroughtIn>;

/** A project that is here now, and whose archive it came in. */
export const ArchiveBroughtIn = z
  .strictObject({ projectId: ProjectId, name: z.string(), entries: z.int(), signedBy: Digest, signedAt: Moment })
  .meta({ id: "ArchiveBroughtIn" });
export type ArchiveBroughtIn = z.infer<typeof ArchiveBroughtIn>;

/** What an archive that is brought in may be at most: the file, what it unfolds to, its files, and how much it is folded. */
export const archiveLimits = {
  fileBytes: 384 * 1024 * 1024,
  unfoldedBytes: 1024 * 1024 * 1024,
  files: 5_000,
  /** Of the whole; text of rows folds to about a tenth. */
  ratio: 100,
} as const;
