import { z } from "zod";
import { Operation } from "./operation.ts";

/** Every problem the API answers with; documented in PROBLEMS.md, checked both ways by a test. */
export const problems = {
  "not-signed-in": { status: 401, title: "Sign in first." },
  "sign-in-refused": { status: 401, title: "No one is known by that address and password." },
  "too-many-tries": { status: 429, title: "Too many tries. Wait a minute." },
  "csrf-refused": { status: 403, title: "The page is out of date. Reload it and try again." },
  "origin-refused": { status: 403, title: "The request comes from another site." },
  "token-refused": { status: 401, title: "This access token is unknown, withdrawn or expired." },
  "scope-refused": { status: 403, title: "This access token does not reach that far." },
  "credentials-doubled": { status: 400, title: "Send a session or an access token, not both." },
  "key-reused": { status: 422, title: "That Idempotency-Key was used for something else." },
  "too-many-kept": { status: 409, title: "No more of these are kept. Take one away first." },
  "webhooks-off": { status: 422, title: "This service is not set up to send webhooks." },
  "signing-off": { status: 422, title: "This service is not set up to sign heads of records." },
  "address-refused": { status: 422, title: "Webhooks are not sent to that address." },
  "reading-only": { status: 403, title: "A reader's link opens a project to read, and nothing else." },
  "role-refused": { status: 403, title: "Your role in this project does not do that." },
  "not-confirmed": { status: 403, title: "The owner has not confirmed you as the engineer yet." },
  "administrator-only": { status: 403, title: "Only an administrator of this service does that." },
  "present-password-wrong": { status: 403, title: "The present password is another one." },
  "not-found": { status: 404, title: "There is nothing here, or it is not yours to see." },
  "body-invalid": { status: 400, title: "Something in the request is not as it must be." },
  "body-not-json": { status: 400, title: "The body is not JSON." },
  "body-too-large": { status: 413, title: "The request is larger than this service takes." },
  "media-type": { status: 415, title: "Send application/json." },
  "version-unknown": { status: 400, title: "This version of the scheme is not known here." },
  "draft-conflict": { status: 409, title: "Someone changed the same thing first. Both versions are shown." },
  "draft-refused": { status: 422, title: "The scheme cannot take this change." },
  "draft-base-ahead": { status: 409, title: "The draft is not that far yet. Reload." },
  "digest-mismatch": { status: 409, title: "What is on the screen is not what is here now." },
  "nothing-drawn": { status: 422, title: "The sheet is empty. Set a container first." },
  "revision-unchanged": { status: 409, title: "Nothing has changed since the last revision." },
  "revision-superseded": { status: 409, title: "There is a newer revision." },
  "assessment-pending": { status: 409, title: "This revision is not checked yet." },
  "assessment-moved-on": { status: 409, title: "The assessment of this revision has moved on. Look again." },
  "set-moved-on": { status: 409, title: "The printing of this set has moved on. Look again." },
  "stamp-not-open": { status: 422, title: "This stamp is not open on this revision." },
  "book-moved-on": { status: 412, title: "Someone changed the cost book meanwhile. Look again." },
  "link-gone": { status: 410, title: "This link is used, withdrawn or expired. Ask for a new one." },
  "password-refused": { status: 422, title: "This password will not do." },
  "roles-exclude": { status: 409, title: "One person never both draws and judges in a project." },
  "already-in": { status: 409, title: "That person has this part already." },
  "last-owner": { status: 409, title: "A project keeps an owner." },
  "already-answered": { status: 409, title: "This has been answered already." },
  "own-work": { status: 403, title: "Nobody checks their own work." },
  "seal-hindered": { status: 422, title: "Something stands in the way of the seal." },
  "archive-refused": { status: 422, title: "This archive is not taken." },
  "project-here": { status: 409, title: "This project is here already." },
  "signed-elsewhere": {
    status: 409,
    title: "That part of the record was signed by another service, and is not signed here.",
  },
  "file-refused": { status: 422, title: "This file is not taken." },
  "step-refused": { status: 409, title: "It does not stand so that this can follow." },
  "closer-refused": { status: 403, title: "Whoever raised it closes it, and never whoever met it." },
  "container-unfit": { status: 422, title: "This container cannot be taken there." },
  "id-reused": { status: 409, title: "That id belongs to another act." },
  "element-unknown": { status: 422, title: "No such element in that revision." },
  busy: { status: 503, title: "Too much is asked of the service at once. Try again in a few seconds." },
  unready: { status: 503, title: "The service is starting or stopping. Try again shortly." },
  internal: { status: 500, title: "Something broke here. Nothing was written." },
} as const satisfies Record<string, { status: number; title: string }>;

export type ProblemCode = keyof typeof problems;
const isCode = (code: string): code is ProblemCode => code in problems;
export const problemCodes: readonly ProblemCode[] = Object.keys(problems).filter(isCode);

/** Where in the body, query or path, as a JSON pointer, and what to do. */
export const FieldProblem = z.strictObject({ pointer: z.string(), detail: z.string() }).meta({ id: "FieldProblem" });

/** RFC 9457 problem details, `application/problem+json`. */
export const Problem = z
  .strictObject({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    code: z.string(),
    /** The id under which the request stands in the log of the service, also in the header `request-id`. */
    requestId: z.string().optional(),
    detail: z.string().optional(),
    fields: z.array(FieldProblem).optional(),
    /** At a draft conflict: who changed what after the base, and what was sent. */
    conflict: z
      .strictObject({
        draftNumber: z.int(),
        elements: z.array(z.string()),
        theirs: z.array(z.strictObject({ draftNumber: z.int(), by: z.string(), operations: z.array(Operation) })),
        mine: z.array(Operation),
      })
      .optional(),
  })
  .meta({ id: "Problem" });
export type Problem = z.infer<typeof Problem>;
