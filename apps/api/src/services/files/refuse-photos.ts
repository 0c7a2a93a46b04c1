import type { Photo } from "@cornerway/schema";
import { refuseField, type Outcome } from "../../outcome.ts";
import type { Connection } from "../../store/connection.ts";
import { findFile } from "../../store/file-rows.ts";

/** Refuses photos that are not kept here under the digest that came with them; undefined where all are. */
export async function refusePhotos(
  tx: Connection,
  projectId: string,
  photos: readonly Photo[],
): Promise<Outcome<never> | undefined> {
  for (const [at, { fileId, digest }] of photos.entries()) {
    const file = await findFile(tx, projectId, fileId);
    if (file === null) return refuseField("body-invalid", `/photos/${at}/fileId`, "no such photo is kept here");
    if (file.mediaType === "application/pdf")
      return refuseField("body-invalid", `/photos/${at}/fileId`, "it must be a photo, JPEG or PNG");
    if (file.digest !== digest) return refuseField("digest-mismatch", `/photos/${at}/digest`, "not that photo's");
  }
  return undefined;
}
