import { createHash } from "node:crypto";
import { FileName, largestFileBytes, mostKeptBytes, type KeptFile } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findFile, insertFile, sumOfFiles } from "../../store/file-rows.ts";
import { actOf } from "../act-of.ts";
import { authorOf, type Part } from "../part.ts";
import { contentToKeep } from "./content-to-keep.ts";

/** A file as it comes in. */
export interface FileGiven {
  id: string;
  name: string;
  bytes: Buffer;
}

/**
 * Keeps a PDF as it came, or a photo drawn anew; known by its content and hashed. Sent again under its id it is the same.
 * `most` bounds the bytes of all files of the project.
 */
export async function keepFile(
  database: Database,
  sender: Part,
  given: FileGiven,
  most = mostKeptBytes,
): Promise<Outcome<KeptFile>> {
  const { projectId } = sender;
  const { id, name } = given;
  if (!FileName.safeParse(name).success)
    return refuseField("file-refused", "/file", "its name must be one line of 1 to 200 characters");
  if (given.bytes.byteLength > largestFileBytes) return refuse("body-too-large");
  const kept = await contentToKeep(given.bytes);
  if (!kept.ok) return kept;
  const { mediaType, bytes } = kept.value;
  const digest = createHash("sha256").update(bytes).digest("hex");
  const sizeBytes = bytes.byteLength;
  return actOf(database, sender, "keep-file", async (tx, part) => {
    const earlier = await findFile(tx, projectId, id);
    if (earlier !== null) return isSame(earlier, { digest, name, part }) ? done(earlier) : refuse("id-reused");
    if ((await sumOfFiles(tx, projectId)) + sizeBytes > most) return refuseField("file-refused", "/file", full(most));
    const author = authorOf(part, "keep-file");
    const file = { id, name, mediaType, digest, sizeBytes, author };
    const fileAt = (keptAt: string): KeptFile => ({ ...file, keptAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "file kept", file: fileAt(at) }));
    await insertFile(tx, projectId, fileAt(entry.at), { bytes: new Uint8Array(bytes), entry: entry.number });
    return done(fileAt(entry.at));
  });
}

const full = (most: number): string =>
  `with it this project would keep more than ${Math.floor(most / 1024 / 1024)} MB of files, as many as an archive holds`;

const isSame = (earlier: KeptFile, { digest, name, part }: { digest: string; name: string; part: Part }): boolean =>
  earlier.digest === digest && earlier.name === name && earlier.author.id === part.person.id;
