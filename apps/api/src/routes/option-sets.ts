import {
  KeptOption,
  NewOption,
  NewOptionSet,
  NewPick,
  NewWithdrawal,
  OptionDrawn,
  OptionId,
  OptionPick,
  OptionSetId,
  OptionSetNow,
  OptionSetOpened,
  OptionWithdrawal,
  ProjectId,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { keepOption } from "../services/options/keep-option.ts";
import { openOptionSet } from "../services/options/open-option-set.ts";
import { pickOption } from "../services/options/pick-option.ts";
import { readOptionDrawn, readOptionSetsNow } from "../services/options/read-option-sets.ts";
import { withdrawOption } from "../services/options/withdraw-option.ts";

const path = "/api/projects/:projectId/option-sets";
const ofSet = z.strictObject({ projectId: ProjectId, setId: OptionSetId });
const ofOption = ofSet.extend({ optionId: OptionId });
const tag = "prices";

const listing = described(
  {
    tag,
    id: "listOptionSets",
    summary: "Alternatives side by side, each with its verdict, its premium and its steel",
    description: "Premiums by the cost book as it is now. The last pick of a set counts.",
    answers: { 200: z.array(OptionSetNow) },
  },
  { params: projectParams },
);

const drawing = described(
  { tag, id: "readOption", summary: "An alternative as it is drawn", answers: { 200: OptionDrawn } },
  { params: ofOption },
);

const opening = described(
  {
    tag,
    id: "openOptionSet",
    summary: "Open a set of alternatives",
    answers: { 201: OptionSetOpened },
    problems: ["id-reused"],
  },
  { params: projectParams, body: NewOptionSet },
);

const keeping = described(
  {
    tag,
    id: "keepOption",
    summary: "Keep the draft as the next alternative of a set",
    description:
      "At most six that are not withdrawn, and 24 in all; the engine's answer to each follows from the queue. What is kept never changes.",
    answers: { 201: KeptOption },
    problems: ["id-reused", "draft-base-ahead", "digest-mismatch", "nothing-drawn", "step-refused"],
  },
  { params: ofSet, body: NewOption },
);

const picking = described(
  {
    tag,
    id: "pickOption",
    summary: "Say which alternative is to be built",
    description: "The last word counts, and every one stays, as do the other alternatives. It draws nothing.",
    answers: { 201: OptionPick },
    problems: ["id-reused", "digest-mismatch", "step-refused"],
  },
  { params: ofSet, body: NewPick },
);

const withdrawing = described(
  {
    tag,
    id: "withdrawOption",
    summary: "Take an alternative back",
    description: "By whoever kept it, while it is not the one picked. It stays where it stands, and in the record.",
    answers: { 201: OptionWithdrawal },
    problems: ["id-reused", "step-refused"],
  },
  { params: ofOption, body: NewWithdrawal },
);

export const optionSetRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;

  app.get(path, { config: { act: "read-prices" }, schema: listing }, async (request, reply) =>
    reply.send(await readOptionSetsNow(database.connection, partOfSender(request).projectId)),
  );

  app.get(
    `${path}/:setId/options/:optionId`,
    { config: { act: "read-prices" }, schema: drawing },
    async (request, reply) =>
      answer(reply, await readOptionDrawn(database.connection, partOfSender(request).projectId, request.params)),
  );

  app.post(path, { config: { act: "keep-options" }, schema: opening }, async (request, reply) =>
    answer(reply, await openOptionSet(database, partOfSender(request), request.body), 201),
  );

  app.post(`${path}/:setId/options`, { config: { act: "keep-options" }, schema: keeping }, async (request, reply) =>
    answer(
      reply,
      await keepOption(database, partOfSender(request), { ...request.body, setId: request.params.setId }),
      201,
    ),
  );

  app.post(`${path}/:setId/picks`, { config: { act: "pick-option" }, schema: picking }, async (request, reply) =>
    answer(
      reply,
      await pickOption(database, partOfSender(request), { ...request.body, setId: request.params.setId }),
      201,
    ),
  );

  app.post(
    `${path}/:setId/options/:optionId/withdrawal`,
    { config: { act: "keep-options" }, schema: withdrawing },
    async (request, reply) => {
      const { setId, optionId } = request.params;
      const asked = { ...request.body, setId, optionId };
      return answer(reply, await withdrawOption(database, partOfSender(request), asked), 201);
    },
  );
};
