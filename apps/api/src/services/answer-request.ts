import type { AnswerRequest, Author, ChangeRequest, Digest, DraftActDone, RequestAnswered } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { findDraftAct, readDraft } from "../store/draft-rows.ts";
import { findRequest, insertAnswer, type FoundRequest } from "../store/request-rows.ts";
import { actOf } from "./act-of.ts";
import { applyToDraft } from "./apply-to-draft.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { answerOf } from "./draw.ts";
import { authorOf, type Part } from "./part.ts";
import { requestConflict } from "./request-conflict.ts";

type TakeIn = Extract<AnswerRequest, { answer: "take in" }>;

/** Takes a request in, its operations becoming one act on the draft, or declines it with a reason. */
export async function answerRequest(
  database: Database,
  sender: Part,
  requestId: string,
  body: AnswerRequest,
): Promise<Outcome<RequestAnswered>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "answer-request", async (tx, part) => {
    const author = authorOf(part, "answer-request");
    const found = await findRequest(tx, projectId, requestId);
    if (found === null) return refuse("not-found");
    if (found.answer !== null) return repeated(tx, projectId, found, bodyDigest);
    if (body.answer === "decline")
      return decline(tx, projectId, { request: found.request, author, bodyDigest, reason: body.reason });
    return takeIn(tx, projectId, { request: found.request, author, bodyDigest, body });
  });
}

/** The same answer sent twice gets its first result; another one comes too late. */
async function repeated(
  tx: Connection,
  projectId: string,
  { request, answer }: FoundRequest,
  bodyDigest: Digest,
): Promise<Outcome<RequestAnswered>> {
  if (answer === null || answer.bodyDigest !== bodyDigest) return refuse("already-answered");
  const act = answer.actId === null ? null : await findDraftAct(tx, projectId, answer.actId);
  return done({ request, draft: act && answerOf(act) });
}

async function takeIn(
  tx: Connection,
  projectId: string,
  { request, author, bodyDigest, body }: { request: ChangeRequest; author: Author; bodyDigest: Digest; body: TakeIn },
): Promise<Outcome<RequestAnswered>> {
  const { actId, base } = body;
  const draft = await readDraft(tx, projectId);
  if (base > draft.number) return refuse("draft-base-ahead", { detail: `the draft is at ${draft.number}` });
  if ((await findDraftAct(tx, projectId, actId)) !== null) return refuse("id-reused");
  const conflict = await requestConflict(tx, projectId, { draft, request });
  if (conflict !== undefined) return conflict;
  const act = { id: actId, operations: request.operations, undoes: null, bodyDigest };
  const drawn = await applyToDraft(tx, projectId, { draft, author, act });
  if (!drawn.ok) return drawn;
  const { id: requestId, number } = request;
  const { at } = await append(tx, projectId, author, () => ({ kind: "request taken in", requestId, number, actId }));
  const row = { requestId, state: "taken in", actId, reason: null, author, answeredAt: at, bodyDigest } as const;
  await insertAnswer(tx, projectId, row);
  return done(answered(request, { state: "taken in", author, at, reason: null }, drawn.value));
}

async function decline(
  tx: Connection,
  projectId: string,
  {
    request,
    author,
    bodyDigest,
    reason,
  }: { request: ChangeRequest; author: Author; bodyDigest: Digest; reason: string },
): Promise<Outcome<RequestAnswered>> {
  const { id: requestId, number } = request;
  const { at } = await append(tx, projectId, author, () => ({ kind: "request declined", requestId, number, reason }));
  await insertAnswer(tx, projectId, {
    requestId,
    state: "declined",
    actId: null,
    reason,
    author,
    answeredAt: at,
    bodyDigest,
  });
  return done(answered(request, { state: "declined", author, at, reason }, null));
}

const answered = (
  request: ChangeRequest,
  { state, author, at, reason }: { state: "taken in" | "declined"; author: Author; at: string; reason: string | null },
  draft: DraftActDone | null,
): RequestAnswered => ({ request: { ...request, state, answer: { by: author, at, reason } }, draft });
