import { mostOfThread, NewNote, Note, NoteId, ProjectId, Thread } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { pageHeaders, pageQuery, sendPage } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { readNotePage, readThread } from "../services/read-thread.ts";
import { settleNote } from "../services/settle-note.ts";
import { writeNote } from "../services/write-note.ts";

const path = "/api/projects/:projectId";
const params = z.strictObject({ projectId: ProjectId, noteId: NoteId });

const readingThread = described(
  {
    tag: "review",
    id: "readThread",
    summary: "Notes, change requests and stamps, all at once",
    description: `The latest ${mostOfThread} of each, oldest first. The lists of notes and requests hold the earlier ones.`,
    answers: { 200: Thread },
  },
  { params: projectParams },
);

const listing = described(
  {
    tag: "review",
    id: "listNotes",
    summary: "Notes in the order they were written",
    answers: { 200: z.array(Note) },
    headers: pageHeaders,
  },
  { params: projectParams, querystring: pageQuery(NoteId) },
);

const writing = described(
  {
    tag: "review",
    id: "writeNote",
    summary: "Write a note on an element",
    answers: { 201: Note },
    problems: ["id-reused", "element-unknown"],
  },
  { params: projectParams, body: NewNote },
);

const settling = described(
  { tag: "review", id: "settleNote", summary: "Settle a note", answers: { 200: Note } },
  { params, body: z.strictObject({}).nullish() },
);

export const noteRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(`${path}/thread`, { config: { act: "read-revisions" }, schema: readingThread }, async (request) =>
    readThread(app.database.connection, partOfSender(request)),
  );

  app.get(`${path}/notes`, { config: { act: "read-revisions" }, schema: listing }, async (request, reply) =>
    sendPage(request, reply, await readNotePage(app.database.connection, partOfSender(request), request.query)),
  );

  app.post(`${path}/notes`, { config: { act: "write-note" }, schema: writing }, async (request, reply) =>
    answer(reply, await writeNote(app.database, partOfSender(request), request.body), 201),
  );

  app.post(
    `${path}/notes/:noteId/settle`,
    { config: { act: "settle-note" }, schema: settling },
    async (request, reply) =>
      answer(reply, await settleNote(app.database, partOfSender(request), request.params.noteId)),
  );
};
