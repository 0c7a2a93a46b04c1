import { randomUUID } from "node:crypto";
import { KeptFile, type Photo } from "@cornerway/schema";
import sharp from "sharp";
import supertest from "supertest";
import type { ReviewRoom } from "./review-room.ts";

/** A small photo that the owner has the project keep. */
export async function keepPhoto({ service, path, by: { owner } }: ReviewRoom): Promise<Photo> {
  const made = sharp({ create: { width: 8, height: 8, channels: 3, background: "#555" } });
  const sent = await supertest(service.app.server)
    .post(`${path}/files/${randomUUID()}`)
    .set("cookie", owner.cookie)
    .set("csrf-token", owner.csrfToken)
    .attach("file", await made.jpeg().toBuffer(), { filename: "photo.jpg", contentType: "image/jpeg" })
    .expect(201);
  const { id: fileId, digest } = KeptFile.parse(sent.body);
  return { fileId, digest };
}
