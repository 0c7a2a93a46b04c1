import { problems, type Problem, type ProblemCode } from "@cornerway/schema";
import type { FastifyError, FastifyReply } from "fastify";
import fp from "fastify-plugin";
import type { Outcome, Refusal } from "../outcome.ts";
import { TooBusy } from "../services/turnstile.ts";
import { isUnreachable } from "../store/is-unreachable.ts";
import { NotValid } from "./validation.ts";

/** When it is worth asking again, by problem, in seconds: RFC 9110 section 10.2.3. */
const askAgainAfter: Partial<Record<ProblemCode, number>> = { busy: 5, unready: 2 };

/** Answers with a problem of the catalogue, RFC 9457. */
export function sendProblem(reply: FastifyReply, { code, ...more }: Refusal): FastifyReply {
  const requestId = reply.request.id;
  const problem: Problem = { type: `tag:cornerway.example,2026:${code}`, ...problems[code], code, ...more, requestId };
  const again = askAgainAfter[code];
  if (again !== undefined) reply.header("retry-after", again);
  return reply.code(problem.status).type("application/problem+json").send(JSON.stringify(problem));
}

/** Answers with what a service gave: its value, or the problem. */
export const answer = <T>(reply: FastifyReply, outcome: Outcome<T>, status = 200): FastifyReply =>
  outcome.ok ? reply.code(status).send(outcome.value) : sendProblem(reply, outcome.refusal);

/** Every error leaves as a problem that names the fields; what is not foreseen says nothing of its inside. */
export default fp(
  async (app) => {
    app.setErrorHandler((error: FastifyError, request, reply) => {
      const refusal = refusalOf(error);
      if (refusal.code === "internal")
        request.log.error({ name: error.name, code: error.code, stack: error.stack }, "fault");
      return sendProblem(reply, refusal);
    });
  },
  { name: "problems" },
);

/** What Fastify and its plug-ins refuse, by their code. */
const known: Record<string, ProblemCode> = {
  FST_ERR_CTP_BODY_TOO_LARGE: "body-too-large",
  FST_ERR_CTP_INVALID_MEDIA_TYPE: "media-type",
  FST_ERR_CTP_EMPTY_JSON_BODY: "body-not-json",
  FST_ERR_CTP_INVALID_JSON_BODY: "body-not-json",
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: "body-invalid",
  FST_ERR_MAX_LIMIT: "too-many-tries",
};

function refusalOf(error: FastifyError | NotValid): Refusal {
  if (error instanceof NotValid) return { code: "body-invalid", fields: error.fields };
  const code = known[error.code];
  if (code !== undefined) return { code };
  if (error.statusCode === 429) return { code: "too-many-tries" };
  if (error instanceof TooBusy) return { code: "busy" };
  if (isUnreachable(error)) return { code: "unready" };
  // The JSON parser refuses __proto__ and broken text with a bare 400.
  if (error.statusCode === 400) return { code: "body-not-json" };
  return { code: "internal" };
}
