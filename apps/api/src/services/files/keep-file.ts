import { createHash } from "node:crypto";
import { FileName, largestFileBytes, type KeptFile } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findFile, insertFile } from "../../store/file-rows.ts";
import { actOf } from "../act-of.ts";
import { authorOf, type Part } from "../part.ts";

/** A file as it comes in. */
export interface FileGiven {
  id: string;
  name: string;
  bytes: Buffer;
}

/** Keeps a PDF as it came: known by its content, hashed, its bytes never touched. Sent again under its id it is the same. */
export async function keepFile(database: Database, sender: Part, given: FileGiven): Promise<Outcome<KeptFile>> {
  const { projectId } = sender;
  const refused = refusalOf(given);
  if (refused !== undefined) return refused;
  const digest = createHash("sha256").update(given.bytes).digest("hex");
  const { id, name } = given;
  const sizeBytes = given.bytes.byteLength;
  return actOf(database, sender, "keep-file", async (tx, part) => {
    const earlier = await findFile(tx, projectId, id);
    if (earlier !== null) return isSame(earlier, { digest, name, part }) ? done(earlier) : refuse("id-reused");
    const author = authorOf(part, "keep-file");
    const file = { id, name, mediaType: "application/pdf" as const, digest, sizeBytes, author };
    const fileAt = (keptAt: string): KeptFile => ({ ...file, keptAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "file kept", file: fileAt(at) }));
    const bytes = new Uint8Array(given.bytes);
    await insertFile(tx, projectId, fileAt(entry.at), { bytes, entry: entry.number });
    return done(fileAt(entry.at));
  });
}

const isSame = (earlier: KeptFile, { digest, name, part }: { digest: string; name: string; part: Part }): boolean =>
  earlier.digest === digest && earlier.name === name && earlier.author.id === part.person.id;

/** ISO 32000-1 section 7.5.2: a PDF begins with this; 7.5.5: it ends with an end-of-file marker. */
const [head, tail] = ["%PDF-", "%%EOF"];
const tailBytes = 1024;

function refusalOf({ name, bytes }: FileGiven): Outcome<never> | undefined {
  if (!FileName.safeParse(name).success)
    return refuseField("file-refused", "/file", "its name must be one line of 1 to 200 characters");
  if (bytes.byteLength > largestFileBytes) return refuse("body-too-large");
  const begins = bytes.subarray(0, head.length).toString("latin1") === head;
  const ends = bytes.subarray(-tailBytes).toString("latin1").includes(tail);
  return begins && ends ? undefined : refuseField("file-refused", "/file", "it must be a whole PDF");
}
