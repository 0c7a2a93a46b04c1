import {
  AssessmentRun,
  CheckWorking,
  NewRevision,
  ProjectId,
  RecordedRun,
  Revision,
  RevisionLetter,
  RevisionSummary,
  StrengthReport,
  WorkingId,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { pageHeaders, pageQuery, sendPage } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { sendTagged, sendTaggedText, taggedHeaders, tagHeaders, tagOf } from "../description/tagged.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { readRevision, readRevisions, readStrengthReport, readWorking } from "../services/read-revisions.ts";
import { readRuns } from "../services/read-runs.ts";
import { assessAgain, readAssessmentRun, stopAssessment } from "../services/run-assessment.ts";
import { sendRevision } from "../services/send-revision.ts";

const path = "/api/projects/:projectId/revisions";
const params = z.strictObject({ projectId: ProjectId, letter: RevisionLetter });

const listing = described(
  {
    tag: "revisions",
    id: "listRevisions",
    summary: "The revisions, latest first",
    answers: { 200: z.array(RevisionSummary) },
    headers: pageHeaders,
  },
  { params: projectParams, querystring: pageQuery(RevisionLetter) },
);

const reading = described(
  {
    tag: "revisions",
    id: "readRevision",
    summary: "One revision with its scheme and result",
    answers: { 200: Revision, 304: null },
    headers: tagHeaders,
  },
  { params, headers: taggedHeaders },
);

const sending = described(
  {
    tag: "revisions",
    id: "sendRevision",
    summary: "Send the draft as the next revision",
    description:
      "Carries the draft number and content digest on the sender's screen, and is refused when the draft is another.",
    answers: { 202: RevisionSummary },
    problems: ["id-reused", "draft-base-ahead", "digest-mismatch", "nothing-drawn", "revision-unchanged"],
  },
  { params: projectParams, body: NewRevision },
);

const nothing = z.strictObject({}).nullish();

const running = described(
  {
    tag: "revisions",
    id: "readAssessmentRun",
    summary: "How the assessment of a revision stands, and how far it is",
    answers: { 200: AssessmentRun, 304: null },
    headers: tagHeaders,
  },
  { params, headers: taggedHeaders },
);

const reporting = described(
  {
    tag: "revisions",
    id: "readStrengthReport",
    summary: "What stands behind the verdicts of strength: governing checks, coverage, loads, combinations",
    answers: { 200: StrengthReport, 304: null },
    headers: tagHeaders,
  },
  { params, headers: taggedHeaders },
);

const working = described(
  {
    tag: "revisions",
    id: "readWorking",
    summary: "One working of a revision's assessment, by the name its report gives it",
    answers: { 200: CheckWorking, 304: null },
    headers: tagHeaders,
  },
  { params, headers: taggedHeaders, querystring: z.strictObject({ id: WorkingId }) },
);

const again = described(
  {
    tag: "revisions",
    id: "assessAgain",
    summary: "Have a revision assessed again whose assessment failed",
    answers: { 202: AssessmentRun },
    problems: ["assessment-moved-on"],
  },
  { params, body: nothing },
);

const stopping = described(
  {
    tag: "revisions",
    id: "stopAssessment",
    summary: "Stop the assessment of a revision; its thread is ended",
    answers: { 200: AssessmentRun },
    problems: ["assessment-moved-on"],
  },
  { params, body: nothing },
);

const listingRuns = described(
  {
    tag: "revisions",
    id: "listRuns",
    summary: "Every run of the engine on a revision, and what each says otherwise than the one before",
    description: "A revision checked again by a newer engine shows here what that one finds otherwise.",
    answers: { 200: z.array(RecordedRun) },
  },
  { params },
);

export const revisionRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;
  const run = { act: "run-assessment" } as const;
  const read = { act: "read-revisions" } as const;

  app.get(path, { config: read, schema: listing }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    return sendPage(request, reply, await readRevisions(database.connection, projectId, request.query));
  });

  app.get(`${path}/:letter`, { config: read, schema: reading }, async (request, reply) => {
    const outcome = await readRevision(database.connection, partOfSender(request).projectId, request.params.letter);
    if (!outcome.ok) return answer(reply, outcome);
    const { contentDigest, resultDigest, assessment, verdict, stamp } = outcome.value;
    const tag = tagOf(contentDigest, resultDigest, assessment, verdict, stamp?.id ?? null);
    return sendTagged(request, reply, tag, outcome.value);
  });

  app.post(path, { config: { act: "send-revision" }, schema: sending }, async (request, reply) =>
    answer(reply, await sendRevision(database, partOfSender(request), request.body), 202),
  );

  app.get(`${path}/:letter/assessment`, { config: read, schema: running }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    const outcome = await readAssessmentRun(database.connection, projectId, request.params.letter);
    if (!outcome.ok) return answer(reply, outcome);
    return sendTagged(request, reply, tagOf(JSON.stringify(outcome.value)), outcome.value);
  });

  app.get(`${path}/:letter/assessment/report`, { config: read, schema: reporting }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    const outcome = await readStrengthReport(database.connection, projectId, request.params.letter);
    if (!outcome.ok) return answer(reply, outcome);
    return sendTaggedText(request, reply, tagOf(outcome.value.resultDigest), () => outcome.value.text);
  });

  app.get(`${path}/:letter/assessment/working`, { config: read, schema: working }, async (request, reply) => {
    const { projectId } = partOfSender(request);
    const { letter } = request.params;
    const { id } = request.query;
    const outcome = await readWorking(database.connection, projectId, letter, id);
    if (!outcome.ok) return answer(reply, outcome);
    return sendTaggedText(request, reply, tagOf(outcome.value.resultDigest, id), () => outcome.value.text);
  });

  app.get(`${path}/:letter/assessment/runs`, { config: read, schema: listingRuns }, async (request, reply) =>
    answer(reply, await readRuns(database.connection, partOfSender(request).projectId, request.params.letter)),
  );

  app.post(`${path}/:letter/assessment/again`, { config: run, schema: again }, async (request, reply) =>
    answer(reply, await assessAgain(database, partOfSender(request), request.params.letter), 202),
  );

  app.post(`${path}/:letter/assessment/stop`, { config: run, schema: stopping }, async (request, reply) =>
    answer(reply, await stopAssessment(database, partOfSender(request), request.params.letter)),
  );
};
