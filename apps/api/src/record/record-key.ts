import { createHash, createPublicKey, sign, verify, type KeyObject } from "node:crypto";
import { canonicalJson, type RecordKey } from "@cornerway/schema";

/** A key pair that signs heads, and what is told of it. */
export type SigningKey = { readonly privateKey: KeyObject; readonly stated: RecordKey };

/** The 32 bytes of an Ed25519 public key, base64url, as RFC 8037 writes them. */
export function rawPublicKey(key: KeyObject): string {
  const { x } = createPublicKey(key).export({ format: "jwk" });
  if (x === undefined) throw new TypeError("not an Ed25519 key");
  return x;
}

export const fingerprintOf = (publicKey: string): string =>
  createHash("sha256").update(Buffer.from(publicKey, "base64url")).digest("hex");

/** States a new key; `before` signs it where it follows another. */
export function stateKey(privateKey: KeyObject, since: string, before?: SigningKey): SigningKey {
  const publicKey = rawPublicKey(privateKey);
  const fingerprint = fingerprintOf(publicKey);
  const follows =
    before === undefined
      ? null
      : {
          fingerprint: before.stated.fingerprint,
          signature: signed(succession(publicKey, since, before.stated.fingerprint), before.privateKey),
        };
  return { privateKey, stated: { publicKey, fingerprint, since, follows } };
}

/**
 * True when the list is one chain: each key has the fingerprint of its bytes, the first follows none or one outside the
 * list, each next one is signed by the one before.
 */
export function isKeyChain(keys: readonly RecordKey[]): boolean {
  return keys.every((key, at) => {
    if (key.fingerprint !== fingerprintOf(key.publicKey)) return false;
    const before = keys[at - 1];
    if (before === undefined) return key.follows === null;
    if (key.follows?.fingerprint !== before.fingerprint) return false;
    return isSigned(succession(key.publicKey, key.since, before.fingerprint), key.follows.signature, before.publicKey);
  });
}

/** What the key before says of the next one. */
const succession = (publicKey: string, since: string, after: string) => ({
  after,
  publicKey,
  since,
  what: "record key",
});

/** Ed25519 over the RFC 8785 form, base64url. */
export const signed = (value: object, privateKey: KeyObject): string =>
  sign(null, Buffer.from(canonicalJson(value)), privateKey).toString("base64url");

/** False for a signature by another key, over another value, or of a key that is none. */
export function isSigned(value: object, signature: string, publicKey: string): boolean {
  const key = createPublicKey({ key: { kty: "OKP", crv: "Ed25519", x: publicKey }, format: "jwk" });
  return verify(null, Buffer.from(canonicalJson(value)), key, Buffer.from(signature, "base64url"));
}
