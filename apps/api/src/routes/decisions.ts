import { Decision, DecisionShown, NewDecision } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { decide } from "../services/decide.ts";
import { readDecisions } from "../services/read-decisions.ts";

const path = "/api/projects/:projectId/decisions";

const listing = described(
  {
    tag: "prices",
    id: "listDecisions",
    summary: "The owner's decisions, oldest first, each with what has changed since",
    description: "The latest thousand; earlier ones are in the record.",
    answers: { 200: z.array(DecisionShown) },
  },
  { params: projectParams },
);

const deciding = described(
  {
    tag: "prices",
    id: "decide",
    summary: "Agree to the price of the latest revision or of a request on it, or decline it",
    description:
      "Carries the digests on the owner's screen: of the content, of the cost book, and of the premium. A request taken in is decided on as well, also on a newer revision of the very content that was priced.",
    answers: { 201: Decision },
    problems: ["id-reused", "revision-superseded", "already-answered", "assessment-pending", "digest-mismatch"],
  },
  { params: projectParams, body: NewDecision },
);

export const decisionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-prices" }, schema: listing }, async (request, reply) =>
    reply.send(await readDecisions(app.database.connection, partOfSender(request).projectId)),
  );

  app.post(path, { config: { act: "decide" }, schema: deciding }, async (request, reply) =>
    answer(reply, await decide(app.database, partOfSender(request), request.body), 201),
  );
};
