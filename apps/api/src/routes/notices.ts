import { Notices, NoticesSeen, NoticeSetting } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { readNotices } from "../services/notices/read-notices.ts";
import { moveNoticeMark, readNoticeSetting, writeNoticeSetting } from "../store/notice-rows.ts";

const listing = described(
  {
    tag: "record",
    id: "listNotices",
    summary: "What concerns you in your projects, newest first",
    description: "Entries of the record by others for which your part has something to do or to know.",
    answers: { 200: Notices },
  },
  {},
);
const seeing = described(
  {
    tag: "record",
    id: "seeNotices",
    summary: "Say that you have seen a project's up to an entry",
    answers: { 204: null },
  },
  { params: projectParams, body: NoticesSeen },
);
const reading = described(
  { tag: "account", id: "readNoticeSetting", summary: "How you are told by letter", answers: { 200: NoticeSetting } },
  {},
);
const setting = described(
  {
    tag: "account",
    id: "setNotices",
    summary: "Be told by letter at once, once a day, or not at all",
    answers: { 204: null },
  },
  { body: NoticeSetting },
);

export const noticeRoutes: FastifyPluginAsyncZod = async (app) => {
  const db = app.database.connection;

  app.get("/api/notices", { config: { scope: "read" }, schema: listing }, async (request) =>
    readNotices(db, signedInOf(request).person.id),
  );

  app.post(
    "/api/projects/:projectId/notices/seen",
    { config: { act: "read-record", scope: "none" }, schema: seeing },
    async (request, reply) => {
      const { projectId, person } = partOfSender(request);
      await moveNoticeMark(db, { projectId, personId: person.id }, { seen: request.body.upTo });
      return reply.code(204).send();
    },
  );

  app.get("/api/account/notices", { schema: reading }, async (request) =>
    readNoticeSetting(db, signedInOf(request).person.id),
  );

  app.post("/api/account/notices", { schema: setting }, async (request, reply) => {
    await writeNoticeSetting(db, signedInOf(request).person.id, request.body);
    return reply.code(204).send();
  });
};
