import { STATUS_CODES } from "node:http";
import type { Socket } from "node:net";
import { problems, type ProblemCode } from "@cornerway/schema";
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify";
import { requestIdHeader } from "../request-id.ts";
import { sendProblem } from "./problems.ts";

/** What every answer bears that no route and so no hook has a hand in. */
const bare = {
  "content-security-policy": "default-src 'none'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'",
  "strict-transport-security": "max-age=31536000; includeSubDomains",
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cache-control": "no-store",
} as const;

/** Answers addresses that lead to no route because they cannot be read. */
export function answerBadAddress(_error: FastifyError, request: FastifyRequest, reply: FastifyReply): void {
  reply.headers({ ...bare, [requestIdHeader]: request.id });
  sendProblem(reply, { code: "not-found" });
}

/** The longest part of an address: all that a request's head, 16 KiB in Node, can hold. What it may be, its schema says. */
export const longestParameter = 16_384;

/** What is not HTTP, or has too long a head, is told so on the bare connection. */
export function answerBadRequestLine(error: Error & { code?: string }, socket: Socket): void {
  const tooLong = error.code === "HPE_HEADER_OVERFLOW";
  if (!socket.writable || error.code === "ECONNRESET") return void socket.destroy();
  const code: ProblemCode = tooLong ? "body-too-large" : "body-invalid";
  const status = tooLong ? 431 : 400;
  const body = JSON.stringify({ type: `tag:cornerway.example,2026:${code}`, ...problems[code], code, status });
  const headers = { ...bare, "content-type": "application/problem+json", connection: "close" };
  const lines = Object.entries({ ...headers, "content-length": Buffer.byteLength(body) }).map(
    ([name, value]) => `${name}: ${value}`,
  );
  socket.end([`HTTP/1.1 ${status} ${STATUS_CODES[status]}`, ...lines, "", body].join("\r\n"));
}
