import {
  NewInspection,
  NewJudgement,
  NewPosition,
  NewSurveyedContainer,
  NewSurveyLimits,
  ProjectId,
  ProjectSurveyLimits,
  SurveyedContainerId,
  SurveyedContainerNow,
  SurveyNow,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { inspectContainer } from "../services/survey/inspect-container.ts";
import { judgeContainer } from "../services/survey/judge-container.ts";
import { offerContainer } from "../services/survey/offer-container.ts";
import { placeContainer } from "../services/survey/place-container.ts";
import { readSurvey } from "../services/survey/read-survey.ts";
import { setSurveyLimits } from "../services/survey/survey-limits.ts";

const path = "/api/projects/:projectId/survey";
const tag = "survey and site";
const params = z.strictObject({ projectId: ProjectId, containerId: SurveyedContainerId });
const stepProblems = ["id-reused", "step-refused", "closer-refused"] as const;

const reading = described(
  {
    ...{ tag, id: "readSurvey", summary: "The containers offered for the building, each as it stands now" },
    description: "With what they are held against, and where the newest revision says otherwise than the survey.",
    answers: { 200: SurveyNow },
  },
  { params: projectParams },
);

const offering = described(
  {
    ...{ tag, id: "offerContainer", summary: "Offer a container by its number (ISO 6346)" },
    answers: { 201: SurveyedContainerNow },
    problems: ["id-reused"],
  },
  { params: projectParams, body: NewSurveyedContainer },
);

const limiting = described(
  {
    ...{ tag, id: "setSurveyLimits", summary: "Set what containers of this project are held against" },
    answers: { 201: ProjectSurveyLimits },
    problems: ["id-reused"],
  },
  { params: projectParams, body: NewSurveyLimits },
);

const inspecting = described(
  {
    ...{ tag, id: "inspectContainer", summary: "Keep what an inspection found of a container" },
    answers: { 200: SurveyedContainerNow },
    problems: [...stepProblems, "digest-mismatch"],
  },
  { params, body: NewInspection },
);

const judging = described(
  {
    ...{ tag, id: "judgeContainer", summary: "Accept a container, ask for its repair, or reject it" },
    description: "None is accepted with damage or thickness beyond its limit.",
    answers: { 200: SurveyedContainerNow },
    problems: [...stepProblems, "container-unfit"],
  },
  { params, body: NewJudgement },
);

const placing = described(
  {
    ...{ tag, id: "placeContainer", summary: "Assign an accepted container to a unit of the draft, or release it" },
    description: "What was measured of it is drawn on the unit in the same act, or taken off again.",
    answers: { 200: SurveyedContainerNow },
    problems: [...stepProblems, "container-unfit", "draft-refused"],
  },
  { params, body: NewPosition },
);

export const surveyRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;

  app.get(path, { config: { act: "read-revisions" }, schema: reading }, async (request) =>
    readSurvey(database.connection, partOfSender(request)),
  );

  app.post(path, { config: { act: "survey-container" }, schema: offering }, async (request, reply) =>
    answer(reply, await offerContainer(database, partOfSender(request), request.body), 201),
  );

  app.post(`${path}/limits`, { config: { act: "judge-container" }, schema: limiting }, async (request, reply) =>
    answer(reply, await setSurveyLimits(database, partOfSender(request), request.body), 201),
  );

  app.post(
    `${path}/:containerId/inspections`,
    { config: { act: "survey-container" }, schema: inspecting },
    async (request, reply) =>
      answer(reply, await inspectContainer(database, partOfSender(request), request.params.containerId, request.body)),
  );

  app.post(
    `${path}/:containerId/judgements`,
    { config: { act: "judge-container" }, schema: judging },
    async (request, reply) =>
      answer(reply, await judgeContainer(database, partOfSender(request), request.params.containerId, request.body)),
  );

  app.post(
    `${path}/:containerId/positions`,
    { config: { act: "assign-container" }, schema: placing },
    async (request, reply) =>
      answer(reply, await placeContainer(database, partOfSender(request), request.params.containerId, request.body)),
  );
};
