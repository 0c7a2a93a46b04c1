import { z } from "zod";
import { Digest, ElementId, NoteId, PersonId, RequestId, RevisionId, StampId, TokenPrefix } from "./ids.ts";
import { mostConditions, NewCondition } from "./new-condition.ts";
import { Operation } from "./operation.ts";
import { Role } from "./roles.ts";
import { SentPassword } from "./sent-password.ts";
import { Scheme } from "./scheme.ts";
import { DraftActDone } from "./session.ts";
import { personLine, personText } from "./text.ts";

export const Moment = z.iso.datetime().meta({ id: "Moment" });
export const RevisionLetter = z
  .string()
  .regex(/^[A-Z]{1,2}$/)
  .meta({ id: "RevisionLetter" });

/** `token` is the visible part of the access token that acted for them; absent when they acted by hand. */
export const Author = z
  .strictObject({ id: PersonId, name: z.string(), role: Role, token: TokenPrefix.optional() })
  .meta({ id: "Author" });
export type Author = z.infer<typeof Author>;

/** What people write, pinned to an element and a revision (or the draft, when there is no letter). */
export const Note = z
  .strictObject({
    id: NoteId,
    elementId: ElementId,
    markId: z.string().max(400).nullable(),
    revision: RevisionLetter.nullable(),
    answers: NoteId.nullable(),
    text: z.string(),
    author: Author,
    writtenAt: Moment,
    settledAt: Moment.nullable(),
  })
  .meta({ id: "Note" });
export type Note = z.infer<typeof Note>;

/** Identity of a mark as the engine gives it: printable ASCII. */
export const MarkId = z
  .string()
  .regex(/^[\x20-\x7e]{1,400}$/, "1 to 400 printable ASCII characters")
  .meta({ id: "MarkId" });

export const NewNote = z
  .strictObject({
    id: NoteId,
    elementId: ElementId,
    markId: MarkId.nullable(),
    revision: RevisionLetter.nullable(),
    answers: NoteId.nullable(),
    text: personText(4000),
  })
  .meta({ id: "NewNote" });
export type NewNote = z.infer<typeof NewNote>;

/** A change the engineer asks for; operations on the revision it was made on. */
export const ChangeRequest = z
  .strictObject({
    id: RequestId,
    number: z.int().min(1),
    revision: RevisionLetter,
    contentDigest: Digest,
    text: z.string(),
    operations: z.array(Operation),
    author: Author,
    madeAt: Moment,
    state: z.enum(["open", "taken in", "declined"]),
    answer: z.strictObject({ by: Author, at: Moment, reason: z.string().nullable() }).nullable(),
  })
  .meta({ id: "ChangeRequest" });
export type ChangeRequest = z.infer<typeof ChangeRequest>;

export const NewRequest = z
  .strictObject({
    id: RequestId,
    revision: RevisionLetter,
    contentDigest: Digest,
    text: personText(4000),
    operations: z.array(Operation).min(1).max(200),
  })
  .meta({ id: "NewRequest" });
export type NewRequest = z.infer<typeof NewRequest>;

export const AnswerRequest = z
  .discriminatedUnion("answer", [
    z.strictObject({ answer: z.literal("take in"), actId: z.uuid(), base: z.int().min(0) }),
    z.strictObject({ answer: z.literal("decline"), reason: personText(2000) }),
  ])
  .meta({ id: "AnswerRequest" });
export type AnswerRequest = z.infer<typeof AnswerRequest>;

/** What taking a request in would do to the draft as it is now. */
export const RequestPreview = z
  .strictObject({
    requestId: RequestId,
    /** The draft it was computed on. */
    draftNumber: z.int().min(0),
    /** Keys the request reads or writes that changed in the draft since its revision: taking in would be a conflict. */
    changed: z.array(z.string()),
    /** Why the draft cannot take it, when it cannot. */
    refusal: z.string().nullable(),
    /** The draft with the request taken in, and its digest; null when refused. */
    scheme: Scheme.nullable(),
    contentDigest: Digest.nullable(),
  })
  .meta({ id: "RequestPreview" });
export type RequestPreview = z.infer<typeof RequestPreview>;

/** `draft` is the act that took the request in; null when it was declined. */
export const RequestAnswered = z
  .strictObject({ request: ChangeRequest, draft: DraftActDone.nullable() })
  .meta({ id: "RequestAnswered" });
export type RequestAnswered = z.infer<typeof RequestAnswered>;

export const dispositions = [
  "No exceptions taken",
  "Make corrections noted",
  "Revise and resubmit",
  "Rejected",
] as const;
export const Disposition = z.enum(dispositions).meta({ id: "Disposition" });
export type Disposition = z.infer<typeof Disposition>;

/** What an office puts on its stamps in place of a disposition: the meaning stays one of the four. */
export const StampWords = personLine(60);

export const Stamp = z
  .strictObject({
    id: StampId,
    revision: RevisionLetter,
    /** The one item it is on; absent: the revision as a whole. */
    elementId: ElementId.exactOptional(),
    disposition: Disposition,
    /** The words of the engineer's office for that disposition, where it has its own. */
    wording: StampWords.exactOptional(),
    text: z.string(),
    /** What must be done, each open until it is closed by itself; absent: nothing. */
    conditions: z.array(NewCondition).exactOptional(),
    contentDigest: Digest,
    resultDigest: Digest,
    author: Author,
    pressedAt: Moment,
  })
  .meta({ id: "Stamp" });
export type Stamp = z.infer<typeof Stamp>;

/** Carries the digests on the engineer's screen; the API refuses when they are not the revision's. */
export const NewStamp = z
  .strictObject({
    id: StampId,
    revision: RevisionLetter,
    elementId: ElementId.exactOptional(),
    disposition: Disposition,
    text: personText(4000),
    conditions: z.array(NewCondition).max(mostConditions).exactOptional(),
    contentDigest: Digest,
    resultDigest: Digest,
  })
  .meta({ id: "NewStamp" });
export type NewStamp = z.infer<typeof NewStamp>;

/** A stamp as it is pressed: with the password of whoever presses it, asked again and kept nowhere. */
export const PressStamp = z.strictObject({ stamp: NewStamp, password: SentPassword }).meta({ id: "PressStamp" });
export type PressStamp = z.infer<typeof PressStamp>;

/** Submitting: the draft number and digest on the architect's screen. */
export const NewRevision = z
  .strictObject({
    id: RevisionId,
    draftNumber: z.int().min(0),
    contentDigest: Digest,
    remark: personText(2000).nullable(),
  })
  .meta({ id: "NewRevision" });
export type NewRevision = z.infer<typeof NewRevision>;
