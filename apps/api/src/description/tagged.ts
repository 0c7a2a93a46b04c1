import { createHash } from "node:crypto";
import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";

export const tagHeaders = {
  etag: "Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands.",
};

/** Head of a request for something that has a tag. */
export const taggedHeaders = z.looseObject({
  "if-none-match": z.string().optional().describe("The tag of what is held already (RFC 9110 section 13.1.2)."),
});

/** A strong entity tag (RFC 9110 section 8.8.3) of what determines an answer: digests, numbers, states. */
export const tagOf = (...parts: readonly (string | number | null)[]): string =>
  `"${createHash("sha256").update(JSON.stringify(parts)).digest("base64url")}"`;

/** Answers with a value under its tag, or 304 when that is the one the sender holds. */
export function sendTagged(request: FastifyRequest, reply: FastifyReply, tag: string, value: unknown): FastifyReply {
  reply.header("etag", tag);
  return holds(request.headers["if-none-match"], tag) ? reply.code(304).send() : reply.send(value);
}

/** Compared weakly, as RFC 9110 section 13.1.2 asks. */
const holds = (sent: string | undefined, tag: string): boolean =>
  sent !== undefined && sent.split(",").some((one) => ["*", tag].includes(one.trim().replace(/^W\//, "")));
