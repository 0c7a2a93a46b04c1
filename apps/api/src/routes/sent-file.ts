import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import type { FastifyRequest } from "fastify";

/** The one file of a form, whole, with the name it was sent under. */
export async function sentFile(request: FastifyRequest): Promise<Outcome<{ name: string; bytes: Buffer }>> {
  if (!request.isMultipart()) return refuse("media-type", { detail: "send multipart/form-data" });
  try {
    const part = await request.file();
    if (part === undefined) return refuseField("file-refused", "/file", "no file was sent");
    const bytes = await part.toBuffer();
    if (part.file.truncated) return refuse("body-too-large");
    return done({ name: part.filename.normalize("NFC"), bytes });
  } catch {
    // Whatever the parser of forms stumbles on (RFC 7578) lies in what was sent: it reads nothing else.
    return refuseField("file-refused", "/file", "the form cannot be read to its end; send one file and nothing else");
  }
}
