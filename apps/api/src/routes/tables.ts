import { ProjectId, RevisionLetter, revisionTables } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { sendCsv } from "../description/csv.ts";
import { described } from "../description/described.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { readTable } from "../services/read-table.ts";

const saving = described(
  {
    tag: "revisions",
    id: "saveTable",
    summary: "What a revision holds, as a table",
    description:
      "RFC 4180, units in the names of the columns; text that a spreadsheet would take for a formula is led by an apostrophe. The revision and the cautions follow the last row.",
    mediaType: "text/csv",
    answers: { 200: z.string() },
    headers: { "content-disposition": "`attachment`, with a name for the file." },
    problems: ["assessment-pending"],
  },
  { params: z.strictObject({ projectId: ProjectId, letter: RevisionLetter, table: z.enum(revisionTables) }) },
);

export const tableRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(
    "/api/projects/:projectId/revisions/:letter/tables/:table",
    { config: { act: "read-revisions" }, schema: saving },
    async (request, reply) => {
      const { letter, table } = request.params;
      const outcome = await readTable(app.database.connection, partOfSender(request), { letter, table });
      return outcome.ok ? sendCsv(reply, `${table}-${letter}.csv`, outcome.value) : answer(reply, outcome);
    },
  );
};
