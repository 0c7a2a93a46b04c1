import { BringInComments, NewCommentStep, PlanCheckComment, PlanCheckRegister, ProjectId } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { csvOf, sendCsv } from "../description/csv.ts";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { bringInComments } from "../services/plan-check/bring-in-comments.ts";
import { followComment } from "../services/plan-check/follow-comment.ts";
import { readRegister } from "../services/plan-check/read-register.ts";

const path = "/api/projects/:projectId/plan-check";
const params = z.strictObject({ projectId: ProjectId, commentId: z.uuid() });

const reading = described(
  {
    tag: "permit sets",
    id: "readRegister",
    summary: "The comments of the authority with their replies, and how many stand how",
    answers: { 200: PlanCheckRegister },
  },
  { params: projectParams },
);

const saving = described(
  {
    tag: "permit sets",
    id: "saveRegister",
    summary: "The register as a table",
    description: "RFC 4180; text that a spreadsheet would take for a formula is led by an apostrophe.",
    mediaType: "text/csv",
    answers: { 200: z.string() },
    headers: { "content-disposition": "`attachment`, with a name for the file." },
  },
  { params: projectParams },
);

const bringing = described(
  {
    tag: "permit sets",
    id: "bringInComments",
    summary: "Bring in a sheet of comments of the authority, whole or not at all",
    description:
      "CSV with a heading row that names a number and a comment, and perhaps a discipline and a sheet; or numbered lines.",
    answers: { 201: PlanCheckRegister },
    problems: ["id-reused"],
  },
  { params: projectParams, body: BringInComments },
);

const following = described(
  {
    tag: "permit sets",
    id: "followComment",
    summary: "Assign, answer, close or open again a comment of the authority",
    description: "Nobody closes what they answered themselves.",
    answers: { 200: PlanCheckComment },
    problems: ["id-reused", "step-refused", "closer-refused"],
  },
  { params, body: NewCommentStep },
);

export const planCheckRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;
  const read = { act: "read-revisions" } as const;

  app.get(path, { config: read, schema: reading }, (request) =>
    readRegister(database.connection, partOfSender(request).projectId),
  );

  app.get(`${path}/file`, { config: read, schema: saving }, async (request, reply) => {
    const { comments } = await readRegister(database.connection, partOfSender(request).projectId);
    return sendCsv(reply, "plan-check.csv", csvOf(heads, comments.map(rowOf)));
  });

  app.post(path, { config: { act: "keep-comments" }, schema: bringing }, async (request, reply) =>
    answer(reply, await bringInComments(database, partOfSender(request), request.body), 201),
  );

  // Each step is its own act, looked at by the service; whoever may read may try.
  app.post(`${path}/:commentId/steps`, { config: read, schema: following }, async (request, reply) =>
    answer(reply, await followComment(database, partOfSender(request), request.params.commentId, request.body)),
  );
};

const heads = [
  "number",
  "discipline",
  "comment",
  "sheet named",
  "assigned to",
  "state",
  "response",
  "revision",
  "sheet",
  "detail",
  "page",
  "closed by",
];

const rowOf = ({ number, discipline, text, about, assignedTo, state, reply, closed }: PlanCheckComment): string[] => [
  ...[number, discipline ?? "", text, about ?? "", assignedTo?.name ?? "", state],
  ...[reply === null ? "" : `${reply.form}: ${reply.text}`, reply?.revision ?? "", reply?.sheet ?? ""],
  ...[reply?.detail ?? "", reply?.page ?? "", closed?.by.name ?? ""],
];
