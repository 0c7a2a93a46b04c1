import { z } from "zod";
import { Digest, PersonId, ProjectId } from "./ids.ts";
import { Moment } from "./review.ts";
import { roles } from "./roles.ts";

const base64urlAlphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/** RFC 4648 section 5 without padding; section 3.5: bits the last sign has to spare are zero, so bytes have one text only. */
const base64url = (bytes: number) => {
  const signs = Math.ceil((bytes * 8) / 6);
  const spared = 2 ** (signs * 6 - bytes * 8);
  const last = base64urlAlphabet
    .split("")
    .filter((_, value) => value % spared === 0)
    .join("");
  return z.string().regex(new RegExp(`^[A-Za-z0-9_-]{${signs - 1}}[${last}]$`), `${bytes} bytes in base64url`);
};

/** Ed25519 signature, RFC 8032: 64 bytes. */
export const Signature = base64url(64).meta({ id: "Signature" });
/** Ed25519 public key, RFC 8032: 32 bytes. */
export const PublicKey = base64url(32).meta({ id: "PublicKey" });

/**
 * A key that signs heads. Its fingerprint is SHA-256 over its 32 bytes. One that follows another is signed by it: whoever
 * trusts the first may trust the next.
 */
export const RecordKey = z
  .strictObject({
    publicKey: PublicKey,
    fingerprint: Digest,
    since: Moment,
    follows: z.strictObject({ fingerprint: Digest, signature: Signature }).nullable(),
  })
  .meta({ id: "RecordKey" });
export type RecordKey = z.infer<typeof RecordKey>;

/** The tree head over entries 1 to `number` of a project's record, signed. */
export const SignedHead = z
  .strictObject({
    project: ProjectId,
    number: z.int().min(1),
    head: Digest,
    time: Moment,
    fingerprint: Digest,
    signature: Signature,
  })
  .meta({ id: "SignedHead" });
export type SignedHead = z.infer<typeof SignedHead>;

/** One entry as a proof needs it. `opened` is null where what happened is withheld: its digest stays. */
export const ToldEntry = z
  .strictObject({
    number: z.int().min(1),
    time: Moment,
    actor: PersonId,
    role: z.enum([...roles, "administrator", "service"]),
    kind: z.string().max(100),
    digest: Digest,
    opened: z
      .strictObject({
        salt: Digest,
        actorName: z.string(),
        /** The access token that acted, where one did. */
        token: z.string().optional(),
        payload: z.looseObject({ kind: z.string() }),
      })
      .nullable(),
  })
  .meta({ id: "ToldEntry" });
export type ToldEntry = z.infer<typeof ToldEntry>;

/** An entry that whoever holds the bundle may not see: its place in the tree, and nothing of who, when or what. */
export const HiddenEntry = z.strictObject({ number: z.int().min(1), leaf: Digest }).meta({ id: "HiddenEntry" });
export type HiddenEntry = z.infer<typeof HiddenEntry>;

export const BundleEntry = z.union([ToldEntry, HiddenEntry]);
export type BundleEntry = z.infer<typeof BundleEntry>;

/** A whole record to be checked away from the service; the file is its RFC 8785 form, signed as a whole. */
export const RecordBundle = z
  .strictObject({
    bundle: z.literal(1),
    project: ProjectId,
    name: z.string(),
    entries: z.array(BundleEntry).min(1),
    keys: z.array(RecordKey).min(1),
    head: SignedHead,
    /** By the key of the head, over everything above. */
    signature: Signature,
  })
  .meta({ id: "RecordBundle" });
export type RecordBundle = z.infer<typeof RecordBundle>;
