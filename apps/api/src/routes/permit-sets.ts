import { AskForSet, PermitSetRun, ProjectId } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { refuse } from "../outcome.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { askForSet } from "../services/permit-sets/ask-for-set.ts";
import { stopSet } from "../services/permit-sets/stop-set.ts";
import { findSet, readSetPdf, readSets } from "../store/permit-set-rows.ts";

const path = "/api/projects/:projectId/sets";
const params = z.strictObject({ projectId: ProjectId, setId: z.uuid() });
const mostListed = 50;

const listing = described(
  {
    tag: "permit sets",
    id: "listSets",
    summary: "The permit sets that were asked for, latest first",
    description: `At most ${mostListed}.`,
    answers: { 200: z.array(PermitSetRun) },
  },
  { params: projectParams },
);

const asking = described(
  {
    tag: "permit sets",
    id: "askForSet",
    summary: "Have the permit set of a revision printed",
    description:
      "From the record as it stands now. The same revision, record head, units and template give the same bytes. " +
      "Printing is refused when drawings, schedules and calculations disagree.",
    answers: { 202: PermitSetRun },
    problems: ["id-reused", "assessment-pending"],
  },
  { params: projectParams, body: AskForSet },
);

const reading = described(
  { tag: "permit sets", id: "readSet", summary: "How far a permit set is", answers: { 200: PermitSetRun } },
  { params },
);

const stopping = described(
  {
    tag: "permit sets",
    id: "stopSet",
    summary: "Stop the printing of a permit set",
    answers: { 200: PermitSetRun },
    problems: ["set-moved-on"],
  },
  { params, body: z.strictObject({}).nullish() },
);

const saving = described(
  {
    tag: "permit sets",
    id: "savePermitSet",
    summary: "The printed set",
    mediaType: "application/pdf",
    answers: { 200: z.string().meta({ format: "binary" }) },
    headers: { "content-disposition": "`attachment`, with a name for the file." },
  },
  { params },
);

export const permitSetRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;
  const read = { act: "read-revisions" } as const;
  const print = { act: "print-set" } as const;
  const keyOf = (request: Parameters<typeof partOfSender>[0], id: string) => ({
    projectId: partOfSender(request).projectId,
    id,
  });

  app.get(path, { config: read, schema: listing }, (request) =>
    readSets(database.connection, partOfSender(request).projectId, mostListed),
  );

  app.post(path, { config: print, schema: asking }, async (request, reply) =>
    answer(reply, await askForSet(database, partOfSender(request), request.body), 202),
  );

  app.get(`${path}/:setId`, { config: read, schema: reading }, async (request, reply) => {
    const found = await findSet(database.connection, keyOf(request, request.params.setId));
    return found === null ? answer(reply, refuse("not-found")) : found.run;
  });

  app.post(`${path}/:setId/stop`, { config: print, schema: stopping }, async (request, reply) =>
    answer(reply, await stopSet(database, partOfSender(request), request.params.setId)),
  );

  app.get(`${path}/:setId/file`, { config: read, schema: saving }, async (request, reply) => {
    const key = keyOf(request, request.params.setId);
    const found = await findSet(database.connection, key);
    const pdf = await readSetPdf(database.connection, key);
    if (found === null || pdf === null) return answer(reply, refuse("not-found"));
    const name = `permit-set-${found.run.letter}-to-entry-${found.run.upTo}.pdf`;
    return reply
      .header("content-disposition", `attachment; filename="${name}"`)
      .header("content-security-policy", "sandbox")
      .type("application/pdf")
      .send(pdf);
  });
};
