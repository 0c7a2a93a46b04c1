import { RecordEntry } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { readRecord } from "../services/read-record.ts";

const highestNumber = 2_147_483_647;

/** Numbers in an address are plain decimal figures. */
const figures = z.string().regex(/^[0-9]{1,10}$/, "a whole number in figures");

const querystring = z.strictObject({
  after: figures.default("0").transform(Number).pipe(z.int().max(highestNumber)),
  limit: figures.default("200").transform(Number).pipe(z.int().min(1).max(500)),
});

const reading = described(
  {
    tag: "record",
    id: "readRecord",
    summary: "Entries of the record after a number, oldest first",
    description: "Less those that your roles may not see.",
    answers: { 200: z.array(RecordEntry) },
  },
  { params: projectParams, querystring },
);

export const recordRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/projects/:projectId/record", { config: { act: "read-record" }, schema: reading }, async (request) =>
    readRecord(app.database.connection, partOfSender(request), request.query),
  );
};
