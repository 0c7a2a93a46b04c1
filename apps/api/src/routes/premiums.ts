import {
  PremiumDifference,
  ProjectId,
  RequestId,
  RequestPremium,
  RevisionLetter,
  RevisionPremium,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { sendCsv } from "../description/csv.ts";
import { differenceFile, premiumFile } from "../services/premium-file.ts";
import { readPremiumSince, readRequestPremium, readRevisionPremium } from "../services/read-premium.ts";
import { readCostBook } from "../store/cost-book-rows.ts";

const path = "/api/projects/:projectId";
const ofRevision = z.strictObject({ projectId: ProjectId, letter: RevisionLetter });
const since = ofRevision.extend({ earlier: RevisionLetter });
const ofRequest = z.strictObject({ projectId: ProjectId, requestId: RequestId });
const querystring = z.strictObject({ units: z.enum(["SI", "US"]).default("SI") });
const headers = { "content-disposition": "`attachment`, with a name for the file." };
const told = { tag: "prices", mediaType: "text/csv", headers } as const;

const reading = described(
  {
    tag: "prices",
    id: "readPremium",
    summary: "What a revision costs in structure above the same containers stacked plainly",
    description: "Quantities of what is drawn, times the rates of the cost book as it is now.",
    answers: { 200: RevisionPremium },
  },
  { params: ofRevision },
);

const comparing = described(
  {
    tag: "prices",
    id: "readPremiumSince",
    summary: "What makes up the difference in price since an earlier revision",
    answers: { 200: PremiumDifference },
  },
  { params: since },
);

const asking = described(
  {
    tag: "prices",
    id: "readRequestPremium",
    summary: "What a change request adds to the price of its revision",
    answers: { 200: RequestPremium },
  },
  { params: ofRequest },
);

const words =
  "RFC 4180, with units in the heads of its columns; text that a spreadsheet would take for a formula is led by an apostrophe.";
const saving = described(
  { ...told, id: "savePremium", summary: "The same as a table", description: words, answers: { 200: z.string() } },
  { params: ofRevision, querystring },
);
const savingSince = described(
  {
    ...told,
    id: "savePremiumSince",
    summary: "The difference as a table",
    description: words,
    answers: { 200: z.string() },
  },
  { params: since, querystring },
);

const read = { act: "read-prices" } as const;

export const premiumRoutes: FastifyPluginAsyncZod = async (app) => {
  const { connection } = app.database;

  app.get(`${path}/revisions/:letter/premium`, { config: read, schema: reading }, async (request, reply) =>
    answer(reply, await readRevisionPremium(connection, partOfSender(request).projectId, request.params.letter)),
  );

  app.get(
    `${path}/revisions/:letter/premium/since/:earlier`,
    { config: read, schema: comparing },
    async (request, reply) =>
      answer(reply, await readPremiumSince(connection, partOfSender(request).projectId, request.params)),
  );

  app.get(`${path}/requests/:requestId/premium`, { config: read, schema: asking }, async (request, reply) =>
    answer(reply, await readRequestPremium(connection, partOfSender(request).projectId, request.params.requestId)),
  );

  app.get(`${path}/revisions/:letter/premium/file`, { config: read, schema: saving }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    const outcome = await readRevisionPremium(connection, projectId, request.params.letter);
    if (!outcome.ok) return answer(reply, outcome);
    const { book } = await readCostBook(connection, projectId);
    return sendCsv(
      reply,
      `premium-${request.params.letter}.csv`,
      premiumFile(outcome.value, book, request.query.units),
    );
  });

  app.get(
    `${path}/revisions/:letter/premium/since/:earlier/file`,
    { config: read, schema: savingSince },
    async (request, reply) => {
      const { letter, earlier } = request.params;
      const outcome = await readPremiumSince(connection, partOfSender(request).projectId, request.params);
      if (!outcome.ok) return answer(reply, outcome);
      return sendCsv(reply, `premium-${earlier}-to-${letter}.csv`, differenceFile(outcome.value, request.query.units));
    },
  );
};
