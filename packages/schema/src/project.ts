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
    /** True for an engineer whom the owner has not confirmed yet: they read, and do nothing else. */
    awaitsConfirmation: z.boolean(),
    /** True where someone comes as the engineer and waits for the owner's word. */
    engineerToConfirm: z.boolean(),
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

/**
 * How the server's own assessment of a revision stands: `waiting` until there is an answer; `done`, and it may be stamped;
 * `failed`, and it may be run again; `unreadable` when the answer was made by a newer engine and cannot be read here.
 */
export const AssessmentState = z.enum(["waiting", "done", "failed", "unreadable"]).meta({ id: "AssessmentState" });
export type AssessmentState = z.infer<typeof AssessmentState>;

/** The latest run of the engine on a revision, and how far it is. */
export const AssessmentRun = z
  .strictObject({
    letter: RevisionLetter,
    /** 1 for the run that sending the revision asks for. */
    attempt: z.int().min(1),
    state: AssessmentState,
    askedAt: Moment,
    /** Null while no engine has taken it up. */
    startedAt: Moment.nullable(),
    steps: z.strictObject({ done: z.int().min(0), of: z.int().min(1) }),
    /** What is left by the pace of the steps so far, ms; null where that says nothing yet or it is over. */
    leftMs: z.int().min(0).nullable(),
    /** Why it failed. */
    why: z.string().nullable(),
    /** The engine that gave the answer. */
    engineVersion: z.string().nullable(),
  })
  .meta({ id: "AssessmentRun" });
export type AssessmentRun = z.infer<typeof AssessmentRun>;

export const RevisionSummary = z
  .strictObject({
    letter: RevisionLetter,
    contentDigest: Digest,
    resultDigest: Digest.nullable(),
    sentAt: Moment,
    sentBy: Author,
    remark: z.string().nullable(),
    verdict: Verdict,
    assessment: AssessmentState,
    stamp: Stamp.nullable(),
  })
  .meta({ id: "RevisionSummary" });
export type RevisionSummary = z.infer<typeof RevisionSummary>;

export const Revision = RevisionSummary.extend({ scheme: Scheme, result: Assessment.nullable() }).meta({
  id: "Revision",
});
export type Revision = z.infer<typeof Revision>;

/** How many of each kind a thread holds at most: the latest. Earlier ones are in the lists that come in pages. */
export const mostOfThread = 1_000;

/** Everything a review sheet shows beside the drawing. */
export const Thread = z
  .strictObject({ notes: z.array(Note), requests: z.array(ChangeRequest), stamps: z.array(Stamp) })
  .meta({ id: "Thread" });
export type Thread = z.infer<typeof Thread>;
