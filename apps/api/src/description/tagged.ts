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

/**
 * An entity tag of what determines an answer: digests, numbers, states. Weak, because it is the same whether the answer is
 * sent compressed or not (RFC 9110 sections 8.8.1 and 8.8.3.3).
 */
export const tagOf = (...parts: readonly (string | number | null)[]): string =>
  `W/"${createHash("sha256").update(JSON.stringify(parts)).digest("base64url")}"`;

/** A strong tag, for what is sent in one coding only and is changed under `If-Match`. */
export const digestTag = (digest: string): string => `"${digest}"`;

/** Whether an `If-Match` means what has a digest; compared strongly, as RFC 9110 section 13.1.1 asks. */
export const meansDigest =
  (ifMatch: string) =>
  (digest: string): boolean =>
    ifMatch.split(",").some((one) => ["*", digestTag(digest)].includes(one.trim()));

/** Answers with a value under its tag, or 304 when that is the one the sender holds. */
export const sendTagged = (request: FastifyRequest, reply: FastifyReply, tag: string, value: unknown): FastifyReply =>
  holds(request, tag) ? headed(reply, tag).code(304).send() : headed(reply, tag).send(value);

/** The same for what is JSON text, which is made only when it is sent. */
export const sendTaggedText = (
  request: FastifyRequest,
  reply: FastifyReply,
  tag: string,
  text: () => string,
): FastifyReply =>
  holds(request, tag)
    ? headed(reply, tag).code(304).send()
    : headed(reply, tag).type("application/json; charset=utf-8").send(text());

/** A 304 has the fields that the answer in full would have (RFC 9110 section 15.4.5). */
const headed = (reply: FastifyReply, tag: string): FastifyReply =>
  reply.header("etag", tag).header("vary", "accept-encoding");

/** Compared weakly, as RFC 9110 section 13.1.2 asks. */
function holds({ headers }: FastifyRequest, tag: string): boolean {
  const opaque = (one: string) => one.trim().replace(/^W\//, "");
  return headers["if-none-match"]?.split(",").some((one) => ["*", opaque(tag)].includes(opaque(one))) ?? false;
}
