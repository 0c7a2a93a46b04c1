import { longestPhotoSidePx, mostPhotoPixels } from "@cornerway/schema";
import sharp from "sharp";
import { Turnstile } from "../turnstile.ts";

export type PhotoKind = "jpeg" | "png";

/** A picture read out takes four bytes a pixel: few at a time, and not many waiting. */
const gate = new Turnstile({ atOnce: 2, mostWaiting: 16 });
const jpegQuality = 82;

/**
 * A photo read out and drawn anew in its own format, upright and no larger than is kept: nothing of what was written beside the
 * picture is left, nor of what was hung on behind it. Undefined where it is not a whole picture of that kind, or has too many pixels.
 * Throws `TooBusy` when too many wait.
 */
export const drawnAnew = (sent: Buffer, kind: PhotoKind): Promise<Buffer | undefined> =>
  gate.pass(async () => {
    try {
      const picture = sharp(sent, { failOn: "error", limitInputPixels: mostPhotoPixels });
      if ((await picture.metadata()).format !== kind) return undefined;
      const side = longestPhotoSidePx;
      const upright = picture
        .autoOrient()
        .resize({ width: side, height: side, fit: "inside", withoutEnlargement: true });
      return await (kind === "jpeg" ? upright.jpeg({ quality: jpegQuality }) : upright.png()).toBuffer();
    } catch {
      // Whatever the decoder stumbles on lies in what was sent: it reads nothing else.
      return undefined;
    }
  });
