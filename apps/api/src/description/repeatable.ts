import { digestOf } from "@cornerway/schema";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import { signedInOf } from "../plugins/signed-in.ts";
import type { Repeatable } from "../store/repeatable-rows.ts";

/** Bare or, as a structured field (RFC 9651), in quotation marks. */
const keyForm = /^(?:"[\x21\x23-\x5b\x5d-\x7e]{1,255}"|[\x21\x23-\x5b\x5d-\x7e]{1,255})$/;

/**
 * Head of a request that makes something whose id the service gives. The field is that of the IETF draft "The
 * Idempotency-Key HTTP Header Field" (from memory).
 */
export const repeatableHeaders = z.looseObject({
  "idempotency-key": z
    .string()
    .regex(keyForm, "1 to 255 printable characters, such as a UUID")
    .optional()
    .describe("Sent again within 24 hours with the same body, the first answer comes again and nothing is done twice."),
});

/** What is sent under the request's Idempotency-Key; null when it has none. */
export function repeatableOf(request: FastifyRequest): Repeatable | null {
  const key = request.headers["idempotency-key"];
  if (typeof key !== "string") return null;
  const [address = ""] = request.url.split("?", 1);
  return {
    personId: signedInOf(request).person.id,
    way: `${request.method} ${address}`,
    key: key.replaceAll('"', ""),
    bodyDigest: digestOf(request.body ?? null),
  };
}
