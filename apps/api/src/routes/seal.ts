import {
  CheckNow,
  Confirmation,
  IssueForSeal,
  MarkDisposition,
  NewCheck,
  NewConfirmation,
  NewMarkDisposition,
  NewSealedCopy,
  ProjectId,
  SealIssueId,
  SealIssueNow,
  SealState,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { askPasswordAgain } from "../services/ask-password-again.ts";
import { checkRevision } from "../services/check-revision.ts";
import { confirmValues } from "../services/seal/confirm-values.ts";
import { disposeMark } from "../services/seal/dispose-mark.ts";
import { issueForSeal } from "../services/seal/issue-for-seal.ts";
import { keepSealedCopy } from "../services/seal/keep-sealed-copy.ts";
import { readSeal } from "../services/seal/read-seal.ts";

const path = "/api/projects/:projectId";
const tag = "review";
const params = z.strictObject({ projectId: ProjectId, issueId: SealIssueId });
const judged = ["id-reused", "revision-superseded", "assessment-pending", "digest-mismatch"] as const;

const reading = described(
  {
    ...{ tag, id: "readSeal", summary: "Everything between the newest revision and its seal" },
    description:
      "What stands in the way, checks by a second engineer, dispositions of marks, values confirmed, issues.",
    answers: { 200: SealState },
  },
  { params: projectParams },
);

const checking = described(
  {
    ...{ tag, id: "checkRevision", summary: "Check the newest revision as a second engineer" },
    description: "Refused to whoever drew or judged in the project.",
    answers: { 201: CheckNow },
    problems: [...judged, "own-work"],
  },
  { params: projectParams, body: NewCheck },
);

const disposing = described(
  {
    ...{ tag, id: "disposeMark", summary: "Put the engineer's own disposition on a mark, with a calculation" },
    answers: { 201: MarkDisposition },
    problems: [...judged, "element-unknown"],
  },
  { params: projectParams, body: NewMarkDisposition },
);

const confirming = described(
  {
    ...{ tag, id: "confirmValues", summary: "Confirm values from memory against the published text" },
    answers: { 201: Confirmation },
    problems: ["id-reused"],
  },
  { params: projectParams, body: NewConfirmation },
);

const issuing = described(
  {
    ...{ tag, id: "issueForSeal", summary: "Issue the newest revision for seal" },
    description: "Takes PRELIMINARY off the sheets, once nothing stands in the way; the service itself never seals.",
    answers: { 201: SealIssueNow },
    problems: [...judged, "present-password-wrong", "busy", "already-answered", "seal-hindered"],
  },
  { params: projectParams, body: IssueForSeal },
);

const keeping = described(
  {
    ...{ tag, id: "keepSealedCopy", summary: "Lay the sealed PDF that came back beside its issue" },
    answers: { 200: SealIssueNow },
    problems: ["id-reused", "digest-mismatch"],
  },
  { params, body: NewSealedCopy },
);

export const sealRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;

  app.get(`${path}/seal`, { config: { act: "read-revisions" }, schema: reading }, async (request) =>
    readSeal(database.connection, partOfSender(request)),
  );

  app.post(`${path}/checks`, { config: { act: "check-revision" }, schema: checking }, async (request, reply) =>
    answer(reply, await checkRevision(database, partOfSender(request), request.body), 201),
  );

  app.post(`${path}/dispositions`, { config: { act: "dispose-mark" }, schema: disposing }, async (request, reply) =>
    answer(reply, await disposeMark(database, partOfSender(request), request.body), 201),
  );

  app.post(`${path}/confirmations`, { config: { act: "confirm-value" }, schema: confirming }, async (request, reply) =>
    answer(reply, await confirmValues(database, partOfSender(request), request.body), 201),
  );

  app.post(`${path}/seal-issues`, { config: { act: "issue-for-seal" }, schema: issuing }, async (request, reply) => {
    const part = partOfSender(request);
    const { issue, password } = request.body;
    const known = await askPasswordAgain(database.connection, part.person.id, { password, pointer: "/password" });
    return known.ok ? answer(reply, await issueForSeal(database, part, issue), 201) : answer(reply, known);
  });

  app.post(
    `${path}/seal-issues/:issueId/copies`,
    { config: { act: "issue-for-seal" }, schema: keeping },
    async (request, reply) =>
      answer(reply, await keepSealedCopy(database, partOfSender(request), request.params.issueId, request.body)),
  );
};
