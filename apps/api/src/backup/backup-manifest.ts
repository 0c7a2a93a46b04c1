import { createHash } from "node:crypto";
import { ArchivedFile, canonicalJson, Digest, Moment, RecordKey, Signature } from "@cornerway/schema";
import { z } from "zod";
import { isKeyChain, isSigned, signed, type SigningKey } from "../record/record-key.ts";

export const backupManifestName = "backup.json";

/** What `backup.json` says: which migrations the tables had, every other file with its rows and its SHA-256, signed as a whole. */
export const BackupManifest = z.strictObject({
  backup: z.literal(1),
  madeAt: Moment,
  engineVersion: z.string(),
  /** Names of the migrations that had been applied, in order. */
  migrations: z.array(z.string().regex(/^\w{1,200}$/)).min(1),
  files: z.array(ArchivedFile.extend({ table: z.string().regex(/^\w{1,60}$/), rows: z.int().min(0) })),
  /** The chain of keys and its last one's signature; null where the service signs nothing. */
  signed: z.strictObject({ keys: z.array(RecordKey).min(1), fingerprint: Digest, signature: Signature }).nullable(),
});
export type BackupManifest = z.infer<typeof BackupManifest>;
export type BackupFile = BackupManifest["files"][number];
export type UnsignedBackup = Omit<BackupManifest, "signed">;

/** The manifest with a signature over it, where there is a key. */
export function signBackup(
  unsigned: UnsignedBackup,
  signer: { keys: readonly RecordKey[]; key: SigningKey } | null,
): BackupManifest {
  if (signer === null) return { ...unsigned, signed: null };
  const signature = signed(statement(unsigned), signer.key.privateKey);
  return { ...unsigned, signed: { keys: [...signer.keys], fingerprint: signer.key.stated.fingerprint, signature } };
}

/** What is wrong with the signature; `expected` is a fingerprint known from outside, `unsigned` says that none is asked for. */
export function backupSignatureFaults(
  { signed: by, ...unsigned }: BackupManifest,
  { expected, unsigned: taken }: { expected?: string | undefined; unsigned: boolean },
): string[] {
  if (by === null)
    return taken && expected === undefined
      ? []
      : ["it is not signed: nothing shows that it is as it was made. --unsigned takes it as it is"];
  const signer = by.keys.at(-1);
  if (!isKeyChain(by.keys) || signer === undefined || signer.fingerprint !== by.fingerprint)
    return ["the keys do not follow one another"];
  if (expected !== undefined && !by.keys.some(({ fingerprint }) => fingerprint === expected))
    return ["no key of it has the fingerprint that was expected"];
  return isSigned(statement(unsigned), by.signature, signer.publicKey)
    ? []
    : ["the signature does not hold: what it states is not what was signed"];
}

const statement = (unsigned: UnsignedBackup) => ({ ...unsigned, what: "backup" });

export const manifestText = (manifest: BackupManifest): string => canonicalJson(manifest);

export const newSha256 = () => createHash("sha256");
