import { BringIn, DraftActDone, ProjectId, RevisionLetter, SchemeFile } from "@cornerway/schema";
import type { FastifyReply } from "fastify";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { largestDrawnBytes, projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { bringIn } from "../services/bring-in.ts";
import { saveDraft, saveRevision, type SavedFile } from "../services/save-file.ts";

const path = "/api/projects/:projectId";
const headers = { "content-disposition": "`attachment`, with a name for the file." };

const savingDraft = described(
  { tag: "draft", id: "saveDraft", summary: "The draft as a file", answers: { 200: SchemeFile }, headers },
  { params: projectParams },
);

const savingRevision = described(
  { tag: "revisions", id: "saveRevision", summary: "A revision as a file", answers: { 200: SchemeFile }, headers },
  { params: z.strictObject({ projectId: ProjectId, letter: RevisionLetter }) },
);

const bringing = described(
  {
    tag: "draft",
    id: "bringIn",
    summary: "Make the draft what a file holds: one act, which can be taken back",
    answers: { 200: DraftActDone },
    problems: ["id-reused", "draft-base-ahead", "draft-conflict", "draft-refused"],
  },
  { params: projectParams, body: BringIn },
);

export const schemeFileRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(`${path}/draft/file`, { config: { act: "read-draft" }, schema: savingDraft }, async (request, reply) =>
    sendFile(reply, await saveDraft(app.database.connection, partOfSender(request).projectId)),
  );

  app.get(
    `${path}/revisions/:letter/file`,
    { config: { act: "read-revisions" }, schema: savingRevision },
    async (request, reply) => {
      const { projectId } = partOfSender(request);
      const outcome = await saveRevision(app.database.connection, projectId, request.params.letter);
      return outcome.ok ? sendFile(reply, outcome.value) : answer(reply, outcome);
    },
  );

  app.post(
    `${path}/draft/file`,
    { config: { act: "draw" }, schema: bringing, bodyLimit: largestDrawnBytes },
    async (request, reply) => answer(reply, await bringIn(app.database, partOfSender(request), request.body)),
  );
};

/** Laid out with spaces, for people who read or compare it. */
const sendFile = (reply: FastifyReply, { name, file }: SavedFile): FastifyReply =>
  reply
    .header("content-disposition", `attachment; filename="${name}"`)
    .type("application/json; charset=utf-8")
    .send(`${JSON.stringify(file, undefined, 2)}\n`);
