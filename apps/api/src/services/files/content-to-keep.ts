import type { KeptFile } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../../outcome.ts";
import { TooBusy } from "../turnstile.ts";
import { drawnAnew, type PhotoKind } from "./drawn-anew.ts";

export interface ContentToKeep {
  mediaType: KeptFile["mediaType"];
  bytes: Buffer;
}

/** What is kept of a file, known by its content alone: a whole PDF as it is, a JPEG or PNG drawn anew; anything else is refused. */
export async function contentToKeep(sent: Buffer): Promise<Outcome<ContentToKeep>> {
  if (isPdf(sent)) return done({ mediaType: "application/pdf", bytes: sent });
  const kind = photoKindOf(sent);
  if (kind === undefined) return refuseField("file-refused", "/file", "it must be a whole PDF, JPEG or PNG");
  try {
    const bytes = await drawnAnew(sent, kind);
    return bytes === undefined
      ? refuseField("file-refused", "/file", "the picture is cut short, damaged or larger than 60 million pixels")
      : done({ mediaType: `image/${kind}`, bytes });
  } catch (error) {
    if (error instanceof TooBusy) return refuse("busy");
    throw error;
  }
}

/** ISO 32000-1 section 7.5.2: a PDF begins with this; 7.5.5: it ends with an end-of-file marker. */
const [head, tail] = ["%PDF-", "%%EOF"];
const tailBytes = 1024;

const isPdf = (bytes: Buffer): boolean =>
  bytes.subarray(0, head.length).toString("latin1") === head &&
  bytes.subarray(-tailBytes).toString("latin1").includes(tail);

/** First bytes: ISO/IEC 10918-1 annex B (start of image, then a marker); ISO/IEC 15948 section 5.2. */
const signatures: Record<PhotoKind, Buffer> = {
  jpeg: Buffer.from([0xff, 0xd8, 0xff]),
  png: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
};

const photoKindOf = (bytes: Buffer): PhotoKind | undefined =>
  (["jpeg", "png"] as const).find((kind) => bytes.subarray(0, signatures[kind].length).equals(signatures[kind]));
