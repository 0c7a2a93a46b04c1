import { KeptFile } from "@cornerway/schema";
import type { Connection } from "./connection.ts";

export async function insertFile(
  tx: Connection,
  projectId: string,
  file: KeptFile,
  { bytes, entry }: { bytes: Uint8Array<ArrayBuffer>; entry: number },
): Promise<void> {
  await tx.keptFile.create({ data: { projectId, ...file, bytes, entry } });
}

/** What is known of a file, without its bytes; null when there is none. */
export async function findFile(db: Connection, projectId: string, id: string): Promise<KeptFile | null> {
  const row = await db.keptFile.findUnique({
    where: { projectId_id: { projectId, id } },
    omit: { bytes: true, projectId: true, entry: true },
  });
  return row === null ? null : KeptFile.parse({ ...row, keptAt: row.keptAt.toISOString() });
}

/** Bytes of all files a project keeps. */
export async function sumOfFiles(db: Connection, projectId: string): Promise<number> {
  const { _sum } = await db.keptFile.aggregate({ where: { projectId }, _sum: { sizeBytes: true } });
  return _sum.sizeBytes ?? 0;
}

/** The bytes of a file as they came; null when there is none. */
export async function readFileBytes(db: Connection, projectId: string, id: string): Promise<Uint8Array | null> {
  const row = await db.keptFile.findUnique({ where: { projectId_id: { projectId, id } }, select: { bytes: true } });
  return row?.bytes ?? null;
}
