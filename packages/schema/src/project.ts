import { z } from "zod";
import { Assessment } from "./assessment.ts";
import { Digest, PersonId, ProjectId } from "./ids.ts";
import { Author, ChangeRequest, Moment, Note, RevisionLetter, Stamp } from "./review.ts";
import { Role } from "./roles.ts";
import { Scheme } from "./scheme.ts";
import { Verdict } from "./verdict.ts";

export const Member = z.strictObject({ id: PersonId, name: z.string(), roles: z.array(Role) }).meta({ id: "Member" });
export type Member = z.infer<typeof Member>;

export const ProjectSummary = z
  .strictObject({
    id: ProjectId,
    name: z.string(),
    place: z.string(),
    client: z.string(),
    roles: z.array(Role),
    revision: RevisionLetter.nullable(),
    verdict: Verdict,
    stamp: Stamp.nullable(),
    /** Who must act next, and since when. */
    waitsFor: Role.nullable(),
    since: Moment.nullable(),
    containers: z.int(),
    /** Number of the last record entry. */
    last: z.int().min(0),
  })
  .meta({ id: "ProjectSummary" });
export type ProjectSummary = z.infer<typeof ProjectSummary>;

export const Project = ProjectSummary.extend({ members: z.array(Member) }).meta({ id: "Project" });
export type Project = z.infer<typeof Project>;

/** The working copy with its number in server order. */
export const Draft = z
  .strictObject({
    number: z.int().min(0),
    contentDigest: Digest,
    scheme: Scheme,
    /** Moves since the last revision. */
    movesSinceRevision: z.int().min(0),
  })
  .meta({ id: "Draft" });
export type Draft = z.infer<typeof Draft>;

export const RevisionSummary = z
  .strictObject({
    letter: RevisionLetter,
    contentDigest: Digest,
    resultDigest: Digest.nullable(),
    sentAt: Moment,
    sentBy: Author,
    remark: z.string().nullable(),
    verdict: Verdict,
    /** `waiting` until the server's own assessment is done; then it may be stamped. */
    assessment: z.enum(["waiting", "done", "failed"]),
    stamp: Stamp.nullable(),
  })
  .meta({ id: "RevisionSummary" });
export type RevisionSummary = z.infer<typeof RevisionSummary>;

export const Revision = RevisionSummary.extend({ scheme: Scheme, result: Assessment.nullable() }).meta({
  id: "Revision",
});
export type Revision = z.infer<typeof Revision>;

/** Everything a review sheet shows beside the drawing. */
export const Thread = z
  .strictObject({ notes: z.array(Note), requests: z.array(ChangeRequest), stamps: z.array(Stamp) })
  .meta({ id: "Thread" });
export type Thread = z.infer<typeof Thread>;
