import { NewNote, NoteId, ProjectId } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { readThread } from "../services/read-thread.ts";
import { settleNote } from "../services/settle-note.ts";
import { writeNote } from "../services/write-note.ts";

const path = "/api/projects/:projectId";
const params = z.strictObject({ projectId: ProjectId, noteId: NoteId });

export const noteRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(`${path}/thread`, { config: { act: "read-revisions" } }, async (request) =>
    readThread(app.database.connection, partOfSender(request)),
  );

  app.post(`${path}/notes`, { config: { act: "write-note" }, schema: { body: NewNote } }, async (request, reply) =>
    answer(reply, await writeNote(app.database, partOfSender(request), request.body), 201),
  );

  app.post(
    `${path}/notes/:noteId/settle`,
    { config: { act: "settle-note" }, schema: { params, body: z.strictObject({}).nullish() } },
    async (request, reply) =>
      answer(reply, await settleNote(app.database, partOfSender(request), request.params.noteId)),
  );
};
