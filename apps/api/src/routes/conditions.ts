import { ConditionId, ConditionNow, JudgeCondition, MeetCondition, ProjectId } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { judgeCondition, meetCondition } from "../services/conditions/follow-condition.ts";
import { readConditions } from "../services/conditions/read-conditions.ts";

const path = "/api/projects/:projectId/conditions";
const params = z.strictObject({ projectId: ProjectId, conditionId: ConditionId });

const listing = described(
  {
    tag: "review",
    id: "listConditions",
    summary: "The conditions of answers, stamps and checks, each as it stands now",
    answers: { 200: z.array(ConditionNow) },
  },
  { params: projectParams },
);

const meeting = described(
  {
    tag: "review",
    id: "meetCondition",
    summary: "Say how a condition is met",
    answers: { 200: ConditionNow },
    problems: ["id-reused", "step-refused", "closer-refused"],
  },
  { params, body: MeetCondition },
);

const judging = described(
  {
    tag: "review",
    id: "judgeCondition",
    summary: "Close a condition that is met, or open it again",
    description: "Done by the role that raised it, never by whoever said that it is met.",
    answers: { 200: ConditionNow },
    problems: ["id-reused", "step-refused", "closer-refused"],
  },
  { params, body: JudgeCondition },
);

export const conditionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-revisions" }, schema: listing }, async (request) =>
    readConditions(app.database.connection, partOfSender(request)),
  );

  app.post(`${path}/:conditionId/met`, { config: { act: "meet-condition" }, schema: meeting }, async (request, reply) =>
    answer(reply, await meetCondition(app.database, partOfSender(request), request.params.conditionId, request.body)),
  );

  app.post(
    `${path}/:conditionId/steps`,
    { config: { act: "judge-condition" }, schema: judging },
    async (request, reply) =>
      answer(
        reply,
        await judgeCondition(app.database, partOfSender(request), request.params.conditionId, request.body),
      ),
  );
};
