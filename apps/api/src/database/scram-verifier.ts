import { createHash, createHmac, pbkdf2Sync, randomBytes } from "node:crypto";

const ITERATIONS = 4096; // least that RFC 7677 §4 allows, and PostgreSQL's own default; the passwords are 32 random bytes
const SALT_BYTES = 16;
const KEY_BYTES = 32;

/**
 * What PostgreSQL stores for a password under SCRAM-SHA-256 (RFC 5802 §3, RFC 7677), so that the password itself
 * never enters a statement or a server log. `password` must be plain ASCII: no preparation of the text is done.
 */
export function scramVerifier(password: string, salt: Buffer = randomBytes(SALT_BYTES)): string {
  const salted = pbkdf2Sync(password, salt, ITERATIONS, KEY_BYTES, "sha256");
  const storedKey = createHash("sha256").update(keyed(salted, "Client Key")).digest("base64");
  const serverKey = keyed(salted, "Server Key").toString("base64");
  return `SCRAM-SHA-256$${ITERATIONS}:${salt.toString("base64")}$${storedKey}:${serverKey}`;
}

function keyed(key: Buffer, text: string): Buffer {
  return createHmac("sha256", key).update(text).digest();
}
