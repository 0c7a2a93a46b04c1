import multipart from "@fastify/multipart";
import { FileId, KeptFile, keptMediaTypes, largestFileBytes, ProjectId } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { keepFile } from "../services/files/keep-file.ts";
import { readFile } from "../services/files/read-file.ts";
import { sentFile } from "./sent-file.ts";

const path = "/api/projects/:projectId/files/:fileId";
const params = z.strictObject({ projectId: ProjectId, fileId: FileId });

const keeping = described(
  {
    tag: "review",
    id: "keepFile",
    summary: "Keep a PDF as it is, or a photo, under an id of the sender's",
    description:
      "One part named `file` of multipart/form-data (RFC 7578), known by its content. A PDF is never touched; a JPEG or PNG is drawn anew, without its position or other metadata.",
    answers: { 201: KeptFile },
    problems: ["id-reused", "file-refused", "media-type", "body-too-large", "busy"],
  },
  { params },
);

const reading = described(
  {
    tag: "review",
    id: "readFile",
    summary: "A kept file, to save",
    answers: { 200: z.string() },
    mediaType: keptMediaTypes,
    headers: { "content-disposition": "The name to save it under." },
  },
  { params },
);

/** Nothing of a file is shown or run here: it is saved, and opened by what the person opens such files with. */
const sandbox = "sandbox; default-src 'none'; frame-ancestors 'none'";

export const fileRoutes: FastifyPluginAsyncZod = async (app) => {
  await app.register(multipart, {
    throwFileSizeLimit: false,
    limits: { files: 1, fields: 0, parts: 1, fileSize: largestFileBytes, headerPairs: 20 },
  });

  app.post(
    path,
    { config: { act: "keep-file" }, schema: keeping, bodyLimit: largestFileBytes + 64 * 1024 },
    async (request, reply) => {
      const sent = await sentFile(request);
      if (!sent.ok) return answer(reply, sent);
      const given = { id: request.params.fileId, ...sent.value };
      return answer(reply, await keepFile(app.database, partOfSender(request), given), 201);
    },
  );

  app.get(path, { config: { act: "read-revisions" }, schema: reading }, async (request, reply) => {
    const outcome = await readFile(app.database.connection, partOfSender(request), request.params.fileId);
    if (!outcome.ok) return answer(reply, outcome);
    const { file, bytes } = outcome.value;
    return reply
      .header("content-disposition", `attachment; filename*=UTF-8''${encodeURIComponent(file.name)}`)
      .header("content-security-policy", sandbox)
      .header("x-content-type-options", "nosniff")
      .type(file.mediaType)
      .send(Buffer.from(bytes));
  });
};
