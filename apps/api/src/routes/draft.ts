import { ActId, Draft, DraftAct, DraftActDone, ProjectId, TakeBack } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { largestDrawnBytes, projectParams } from "../description/params.ts";
import { sendTaggedText, taggedHeaders, tagHeaders, tagOf } from "../description/tagged.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { draw } from "../services/draw.ts";
import { readDraftToSend } from "../services/read-draft.ts";
import { takeBack } from "../services/take-back.ts";

const path = "/api/projects/:projectId/draft";

const reading = described(
  {
    tag: "draft",
    id: "readDraft",
    summary: "The draft as it is now",
    answers: { 200: Draft, 304: null },
    headers: tagHeaders,
  },
  { params: projectParams, headers: taggedHeaders },
);

const drawing = described(
  {
    tag: "draft",
    id: "draw",
    summary: "Draw: one act, whole or not at all",
    description:
      "An act sent twice under one id is one act. It is re-based when nothing it touches changed since its base.",
    answers: { 200: DraftActDone },
    problems: ["id-reused", "draft-base-ahead", "draft-conflict", "draft-refused"],
  },
  { params: projectParams, body: DraftAct },
);

const takingBack = described(
  {
    tag: "draft",
    id: "takeBack",
    summary: "Take an act back by its id",
    description: "The same as drawing its inverse with `undoes`, for acts of more operations than are taken at once.",
    answers: { 200: DraftActDone },
    problems: ["id-reused", "draft-base-ahead", "draft-conflict", "draft-refused"],
  },
  { params: z.strictObject({ projectId: ProjectId, actId: ActId }), body: TakeBack },
);

export const draftRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-draft" }, schema: reading }, async (request, reply) => {
    const draft = await readDraftToSend(app.database, partOfSender(request).projectId);
    const tag = tagOf(draft.number, draft.contentDigest, draft.movesSinceRevision);
    return sendTaggedText(request, reply, tag, draft.text);
  });

  app.post(
    `${path}/acts`,
    { config: { act: "draw" }, schema: drawing, bodyLimit: largestDrawnBytes },
    async (request, reply) => answer(reply, await draw(app.database, partOfSender(request), request.body)),
  );

  app.post(`${path}/acts/:actId/undo`, { config: { act: "draw" }, schema: takingBack }, async (request, reply) =>
    answer(reply, await takeBack(app.database, partOfSender(request), request.params.actId, request.body)),
  );
};
