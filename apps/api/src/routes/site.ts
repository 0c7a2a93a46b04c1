import { NewSiteJudgement, NewSiteWord, SiteNow, SiteWord } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { readSite } from "../services/site/read-site.ts";
import { saySiteWord } from "../services/site/say-site-word.ts";

const path = "/api/projects/:projectId/site";
const tag = "survey and site";
const problems = ["id-reused", "revision-superseded", "step-refused", "closer-refused", "digest-mismatch"] as const;

const reading = described(
  {
    ...{ tag, id: "readSite", summary: "What is built of the newest revision that may be built from, item by item" },
    answers: { 200: SiteNow },
  },
  { params: projectParams },
);

const saying = described(
  {
    ...{ tag, id: "saySiteWord", summary: "Say that an item stands as drawn, stands otherwise, or is not there" },
    description: "Welds and hold points are closed by the engineer.",
    answers: { 201: SiteWord },
    problems,
  },
  { params: projectParams, body: NewSiteWord },
);

const judging = described(
  {
    ...{ tag, id: "judgeSiteItem", summary: "Accept a difference, have it made as drawn, or open an item again" },
    answers: { 201: SiteWord },
    problems,
  },
  { params: projectParams, body: NewSiteJudgement },
);

export const siteRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;

  app.get(path, { config: { act: "read-revisions" }, schema: reading }, async (request) =>
    readSite(database.connection, partOfSender(request)),
  );

  app.post(`${path}/words`, { config: { act: "close-site-item" }, schema: saying }, async (request, reply) =>
    answer(reply, await saySiteWord(database, partOfSender(request), request.body), 201),
  );

  app.post(`${path}/judgements`, { config: { act: "judge-site-item" }, schema: judging }, async (request, reply) =>
    answer(reply, await saySiteWord(database, partOfSender(request), request.body), 201),
  );
};
