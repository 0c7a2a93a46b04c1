import { createPrivateKey, generateKeyPairSync, type KeyObject } from "node:crypto";
import type { ListedKey, RecordKey } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { insertKey, readKeys, type KeptKey } from "../store/record-key-rows.ts";
import { seal, unseal } from "../webhooks/seal.ts";
import { stateKey, type SigningKey } from "./record-key.ts";

/** The chain of keys in force, oldest first, and the last of them, which signs. */
export interface Signer {
  keys: RecordKey[];
  key: SigningKey;
}

/** The key that signs was sealed under another SECRETS_KEY, or was altered: nothing can be signed with it. */
export class KeyLost extends Error {
  constructor(fingerprint: string) {
    super(`the key ${fingerprint} cannot be opened under the SECRETS_KEY of this service`);
    this.name = "KeyLost";
  }
}

/**
 * Who signs heads now. The first key is made when it is first needed. `secretsKey` is what private keys are sealed under.
 * Throws KeyLost where the last one cannot be opened.
 */
export async function readSigner(db: Connection, secretsKey: string): Promise<Signer> {
  const kept = await readKeys(db);
  if (kept.length > 0) return signerOf(kept, secretsKey);
  await insertKey(db, newKey(secretsKey, 1));
  return signerOf(await readKeys(db), secretsKey);
}

/** The key that signed at a time, the first one before any did; null where it cannot be opened any more. */
export async function readKeyAt(db: Connection, secretsKey: string, at: string): Promise<SigningKey | null> {
  if ((await readKeys(db)).length === 0) await readSigner(db, secretsKey);
  const kept = await readKeys(db);
  const then = kept.findLast(({ stated }) => stated.since <= at) ?? kept[0];
  return then !== undefined && canOpen(then, secretsKey) ? opened(then, secretsKey) : null;
}

/** Has a new key take the place of the one that signs, which signs it as its last act. Earlier ones stay listed. */
export async function rotateKey(db: Connection, secretsKey: string): Promise<void> {
  await readSigner(db, secretsKey);
  const last = (await readKeys(db)).at(-1);
  await insertKey(db, newKey(secretsKey, (last?.place ?? 0) + 1, last && opened(last, secretsKey)));
}

/**
 * Begins a chain anew after the key was lost: nothing vouches for the new key but whoever runs the service, who tells its
 * fingerprint. False where the present key opens still, and so can sign the next one.
 */
export async function beginChainAnew(db: Connection, secretsKey: string): Promise<boolean> {
  const last = (await readKeys(db)).at(-1);
  if (last === undefined || canOpen(last, secretsKey)) return false;
  await insertKey(db, newKey(secretsKey, last.place + 1));
  return true;
}

/** Every key with its time of service, oldest first, lost ones too. */
export async function listKeys(db: Connection): Promise<ListedKey[]> {
  const stated = (await readKeys(db)).map((kept) => kept.stated);
  return stated.map((key, at) => ({ ...key, until: stated[at + 1]?.since ?? null }));
}

/** A chain begins with a key that follows none. */
function signerOf(kept: readonly KeptKey[], secretsKey: string): Signer {
  const last = kept.at(-1);
  if (last === undefined) throw new Error("readSigner: the key that was just made is not there");
  const begins = kept.findLastIndex(({ stated }) => stated.follows === null);
  return { keys: kept.slice(begins).map(({ stated }) => stated), key: opened(last, secretsKey) };
}

const belonging = (fingerprint: string): string => `record key ${fingerprint}`;

function opened({ stated, sealed }: KeptKey, secretsKey: string): SigningKey {
  let der: Buffer;
  try {
    der = Buffer.from(unseal(secretsKey, belonging(stated.fingerprint), sealed), "base64");
  } catch {
    throw new KeyLost(stated.fingerprint); // AES-GCM says no more than that it does not open
  }
  return { stated, privateKey: createPrivateKey({ key: der, format: "der", type: "pkcs8" }) };
}

function canOpen(kept: KeptKey, secretsKey: string): boolean {
  try {
    opened(kept, secretsKey);
    return true;
  } catch (error) {
    if (error instanceof KeyLost) return false;
    throw error;
  }
}

function newKey(secretsKey: string, place: number, before?: SigningKey): KeptKey {
  const { privateKey } = generateKeyPairSync("ed25519");
  const now = new Date().toISOString();
  const since = before !== undefined && before.stated.since > now ? before.stated.since : now;
  const { stated } = stateKey(privateKey, since, before);
  const sealed = seal(secretsKey, belonging(stated.fingerprint), pkcs8(privateKey));
  return { place, stated, sealed };
}

const pkcs8 = (key: KeyObject): string => key.export({ format: "der", type: "pkcs8" }).toString("base64");
