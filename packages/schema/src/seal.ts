import { z } from "zod";
import { CheckNow } from "./check.ts";
import { Digest, FileId, SealIssueId, StepId } from "./ids.ts";
import { MarkDispositionNow } from "./mark-disposition.ts";
import { Confirmation, MemoryValue } from "./memory-values.ts";
import { Author, MarkId, Moment, RevisionLetter } from "./review.ts";
import { SentPassword } from "./sent-password.ts";
import { Standing } from "./standing.ts";
import { Verdict } from "./verdict.ts";

/** What stands in the way of issuing a revision for seal, each by itself. */
export const SealHindrance = z
  .discriminatedUnion("why", [
    z.strictObject({ why: z.literal("not assessed") }),
    z.strictObject({ why: z.literal("strength not judged under all loads") }),
    z.strictObject({ why: z.literal("mark"), markId: MarkId, verdict: Verdict }),
    z.strictObject({
      why: z.literal("beyond its limit"),
      ownerId: z.string(),
      part: z.string(),
      utilisation: z.number(),
    }),
    z.strictObject({ why: z.literal("found otherwise"), elementId: z.string() }),
    z.strictObject({ why: z.literal("condition open"), number: z.int() }),
    z.strictObject({ why: z.literal("from memory"), value: MemoryValue }),
  ])
  .meta({ id: "SealHindrance" });
export type SealHindrance = z.infer<typeof SealHindrance>;

const issued = { id: SealIssueId, revision: RevisionLetter, contentDigest: Digest, resultDigest: Digest };

/** The sealed copy that came back: a kept file whose bytes are never touched. */
export const SealedCopy = z
  .strictObject({
    id: StepId,
    fileId: FileId,
    name: z.string(),
    digest: Digest,
    sizeBytes: z.int(),
    by: Author,
    at: Moment,
  })
  .meta({ id: "SealedCopy" });
export type SealedCopy = z.infer<typeof SealedCopy>;

/** The engineer's act that takes PRELIMINARY off the sheets of one revision. Nothing here seals: a person does, elsewhere. */
export const SealIssue = z
  .strictObject({ ...issued, number: z.int().min(1), author: Author, issuedAt: Moment, steps: z.array(SealedCopy) })
  .meta({ id: "SealIssue" });
export type SealIssue = z.infer<typeof SealIssue>;

export const NewSealIssue = z.strictObject(issued).meta({ id: "NewSealIssue" });
export type NewSealIssue = z.infer<typeof NewSealIssue>;

/** With the password of whoever issues, asked again and kept nowhere. */
export const IssueForSeal = z
  .strictObject({ issue: NewSealIssue, password: SentPassword })
  .meta({ id: "IssueForSeal" });
export type IssueForSeal = z.infer<typeof IssueForSeal>;

export const NewSealedCopy = z
  .strictObject({ id: StepId, fileId: FileId, digest: Digest })
  .meta({ id: "NewSealedCopy" });
export type NewSealedCopy = z.infer<typeof NewSealedCopy>;

export const SealIssueNow = z.strictObject({ issue: SealIssue, standing: Standing }).meta({ id: "SealIssueNow" });
export type SealIssueNow = z.infer<typeof SealIssueNow>;

/** Everything between an assessed revision and its seal. */
export const SealState = z
  .strictObject({
    /** The newest revision, and what stands in the way of issuing it; null where nothing was sent. */
    revision: RevisionLetter.nullable(),
    hindrances: z.array(SealHindrance),
    checks: z.array(CheckNow),
    dispositions: z.array(MarkDispositionNow),
    confirmations: z.array(Confirmation),
    issues: z.array(SealIssueNow),
  })
  .meta({ id: "SealState" });
export type SealState = z.infer<typeof SealState>;
