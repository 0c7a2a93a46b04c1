import { CostBook, ProjectCostBook } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { digestTag, meansDigest, sendTagged, taggedHeaders, tagHeaders } from "../description/tagged.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { changeCostBook } from "../services/change-cost-book.ts";
import { readCostBook } from "../store/cost-book-rows.ts";

const path = "/api/projects/:projectId/cost-book";

const reading = described(
  {
    tag: "prices",
    id: "readCostBook",
    summary: "What the project pays for work and steel",
    description: "Figures without a source are for show; so is every price made with them.",
    answers: { 200: ProjectCostBook, 304: null },
    headers: tagHeaders,
  },
  { params: projectParams, headers: taggedHeaders },
);

const changing = described(
  {
    tag: "prices",
    id: "changeCostBook",
    summary: "Change the cost book",
    description: "Refused when it is no longer the one whose tag is in `If-Match`. Each book is kept in the record.",
    answers: { 200: ProjectCostBook },
    headers: tagHeaders,
    problems: ["book-moved-on"],
  },
  {
    params: projectParams,
    headers: z.looseObject({
      "if-match": z
        .string("say which book you change: the tag it was read under")
        .describe("The tag of the book that is changed (RFC 9110 section 13.1.1)."),
    }),
    body: CostBook,
  },
);

export const costBookRoutes: FastifyPluginAsyncZod = async (app) => {
  // Not compressed, so that its tag is a strong one: only those are compared by If-Match.
  app.get(path, { config: { act: "read-prices" }, schema: reading, compress: false }, async (request, reply) => {
    const book = await readCostBook(app.database.connection, partOfSender(request).projectId);
    return sendTagged(request, reply, digestTag(book.digest), book);
  });

  app.post(path, { config: { act: "keep-cost-book" }, schema: changing, compress: false }, async (request, reply) => {
    const isFor = meansDigest(request.headers["if-match"]);
    const outcome = await changeCostBook(app.database, partOfSender(request), request.body, isFor);
    if (outcome.ok) void reply.header("etag", digestTag(outcome.value.digest));
    return answer(reply, outcome);
  });
};
