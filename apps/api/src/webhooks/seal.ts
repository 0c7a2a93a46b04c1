import { createCipheriv, createDecipheriv, randomBytes } from "node:crypto";

const nonceBytes = 12;
const tagBytes = 16;

/**
 * Seals a secret that must be read again under the service's key, which is not in the database: AES-256-GCM (NIST
 * SP 800-38D), bound to what it belongs to.
 */
export function seal(keyHex: string, belongsTo: string, secret: string): string {
  const nonce = randomBytes(nonceBytes);
  const cipher = createCipheriv("aes-256-gcm", Buffer.from(keyHex, "hex"), nonce).setAAD(Buffer.from(belongsTo));
  const sealed = Buffer.concat([cipher.update(secret, "utf8"), cipher.final()]);
  return Buffer.concat([nonce, cipher.getAuthTag(), sealed]).toString("base64url");
}

/** Throws when the key is another one, or what is sealed was altered or belongs to something else. */
export function unseal(keyHex: string, belongsTo: string, sealed: string): string {
  const bytes = Buffer.from(sealed, "base64url");
  const [nonce, tag] = [bytes.subarray(0, nonceBytes), bytes.subarray(nonceBytes, nonceBytes + tagBytes)];
  const decipher = createDecipheriv("aes-256-gcm", Buffer.from(keyHex, "hex"), nonce)
    .setAAD(Buffer.from(belongsTo))
    .setAuthTag(tag);
  return Buffer.concat([decipher.update(bytes.subarray(nonceBytes + tagBytes)), decipher.final()]).toString("utf8");
}
