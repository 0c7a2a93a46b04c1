import { createPrivateKey, generateKeyPairSync, type KeyObject } from "node:crypto";
import type { ListedKey, RecordKey } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { insertKey, readKeys, type KeptKey } from "../store/record-key-rows.ts";
import { seal, unseal } from "../webhooks/seal.ts";
import { stateKey, type SigningKey } from "./record-key.ts";

/** The whole chain of keys, oldest first, and the last of them, which signs. */
export interface Signer {
  keys: RecordKey[];
  key: SigningKey;
}

/** Who signs heads now. The first key is made when it is first needed. `secretsKey` is what private keys are sealed under. */
export async function readSigner(db: Connection, secretsKey: string): Promise<Signer> {
  const kept = await readKeys(db);
  if (kept.length > 0) return signerOf(kept, secretsKey);
  await insertKey(db, newKey(secretsKey, undefined));
  return signerOf(await readKeys(db), secretsKey);
}

/** Has a new key take the place of the one that signs, which signs it as its last act. Earlier ones stay listed. */
export async function rotateKey(db: Connection, secretsKey: string): Promise<void> {
  await readSigner(db, secretsKey);
  const last = (await readKeys(db)).at(-1);
  await insertKey(db, newKey(secretsKey, last && { place: last.place, ...opened(last, secretsKey) }));
}

/** Every key with its time of service, oldest first. */
export async function listKeys(db: Connection): Promise<ListedKey[]> {
  const stated = (await readKeys(db)).map((kept) => kept.stated);
  return stated.map((key, at) => ({ ...key, until: stated[at + 1]?.since ?? null }));
}

function signerOf(kept: readonly KeptKey[], secretsKey: string): Signer {
  const last = kept.at(-1);
  if (last === undefined) throw new Error("readSigner: the key that was just made is not there");
  return { keys: kept.map(({ stated }) => stated), key: opened(last, secretsKey) };
}

const belonging = (fingerprint: string): string => `record key ${fingerprint}`;

/** Throws when the private key was sealed under another SECRETS_KEY, or was altered. */
function opened({ stated, sealed }: KeptKey, secretsKey: string): SigningKey {
  const der = Buffer.from(unseal(secretsKey, belonging(stated.fingerprint), sealed), "base64");
  return { stated, privateKey: createPrivateKey({ key: der, format: "der", type: "pkcs8" }) };
}

function newKey(secretsKey: string, before: (SigningKey & { place: number }) | undefined): KeptKey {
  const { privateKey } = generateKeyPairSync("ed25519");
  const now = new Date().toISOString();
  const since = before !== undefined && before.stated.since > now ? before.stated.since : now;
  const { stated } = stateKey(privateKey, since, before);
  const sealed = seal(secretsKey, belonging(stated.fingerprint), pkcs8(privateKey));
  return { place: (before?.place ?? 0) + 1, stated, sealed };
}

const pkcs8 = (key: KeyObject): string => key.export({ format: "der", type: "pkcs8" }).toString("base64");
