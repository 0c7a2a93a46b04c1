import { createHmac } from "node:crypto";

export const signatureHeader = "cornerway-signature";

/**
 * `time=<seconds since 1970>, sha256=<hex>`: HMAC-SHA256 (RFC 2104) under the webhook's secret over the time, a full stop
 * and the body's bytes.
 */
export function sign(secret: string, body: string, atMs: number): string {
  const time = Math.floor(atMs / 1000);
  return `time=${time}, sha256=${createHmac("sha256", secret).update(`${time}.${body}`).digest("hex")}`;
}
