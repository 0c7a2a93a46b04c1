import multipart from "@fastify/multipart";
import { ArchiveBroughtIn, archiveLimits, Digest } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { bringInArchive } from "../services/archive/bring-in-archive.ts";
import { takeArchive } from "../services/archive/take-archive.ts";
import { sentFile } from "./sent-file.ts";

const taking = described(
  {
    tag: "record",
    id: "takeArchive",
    summary: "The whole project as one archive",
    description:
      "A ZIP with the record, every row and every file, signed as a whole. A later version reads it back; `npx cornerway verify` checks it without any service.",
    answers: { 200: z.string() },
    mediaType: "application/zip",
    headers: { "content-disposition": "`attachment`, with a name for the file." },
    problems: ["signing-off"],
  },
  { params: projectParams },
);

const bringing = described(
  {
    tag: "record",
    id: "bringInArchive",
    summary: "Bring a project in from its archive",
    description:
      "One part named `file` of multipart/form-data (RFC 7578). It is checked first and marked with who signed it; nothing of it is signed anew. `key` is the fingerprint its signer is known to have. Nobody has a part in it until they are asked in.",
    answers: { 201: ArchiveBroughtIn },
    problems: ["archive-refused", "project-here", "file-refused", "media-type", "body-too-large"],
  },
  { querystring: z.strictObject({ key: Digest.optional() }) },
);

export const archiveRoutes: FastifyPluginAsyncZod = async (app) => {
  await app.register(multipart, {
    throwFileSizeLimit: false,
    limits: { files: 1, fields: 0, parts: 1, fileSize: archiveLimits.fileBytes, headerPairs: 20 },
  });

  app.get(
    "/api/projects/:projectId/archive",
    { config: { act: "take-archive" }, schema: taking },
    async (request, reply) => {
      const { projectId } = partOfSender(request);
      const taken = await takeArchive(app.database, projectId, app.recordSigning.secretsKey);
      if (!taken.ok) return answer(reply, taken);
      return reply
        .header("content-disposition", `attachment; filename="project-to-entry-${taken.value.entries}.zip"`)
        .header("x-content-type-options", "nosniff")
        .type("application/zip")
        .send(Buffer.from(taken.value.bytes));
    },
  );

  app.post(
    "/api/archives",
    { config: { administrator: true }, schema: bringing, bodyLimit: archiveLimits.fileBytes + 64 * 1024 },
    async (request, reply) => {
      const sent = await sentFile(request);
      if (!sent.ok) return answer(reply, sent);
      const { id, name } = signedInOf(request).person;
      const given = { bytes: sent.value.bytes, fingerprint: request.query.key };
      return answer(reply, await bringInArchive(app.database, { id, name, role: "administrator" }, given), 201);
    },
  );
};
