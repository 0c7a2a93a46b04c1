import { RecordKey } from "@cornerway/schema";
import { Prisma } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

/** A key with its sealed private part. */
export interface KeptKey {
  place: number;
  stated: RecordKey;
  sealed: string;
}

/** Every key there is, oldest first; the last one signs. */
export async function readKeys(db: Connection): Promise<KeptKey[]> {
  const rows = await db.recordKey.findMany({ orderBy: { place: "asc" } });
  return rows.map(({ place, sealed, publicKey, fingerprint, since, follows }) => ({
    ...{ place, sealed },
    stated: RecordKey.parse({ publicKey, fingerprint, since: since.toISOString(), follows }),
  }));
}

/** Adds the next key; where another process added one in its place meanwhile, that one stays. */
export async function insertKey(db: Connection, { place, sealed, stated }: KeptKey): Promise<void> {
  const { publicKey, fingerprint, since } = stated;
  const follows = stated.follows ?? Prisma.DbNull;
  await db.recordKey.createMany({
    data: [{ place, sealed, publicKey, fingerprint, since, follows }],
    skipDuplicates: true,
  });
}
