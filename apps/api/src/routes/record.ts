import { RecordEntry } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { afterNumber, limit, linkNext, pageHeaders } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { sendTaggedText, taggedHeaders, tagHeaders, tagOf } from "../description/tagged.ts";
import { partOfSender } from "../plugins/part.ts";
import { readRecord } from "../services/read-record.ts";

const querystring = z.strictObject({
  after: afterNumber,
  limit,
});

const reading = described(
  {
    tag: "record",
    id: "readRecord",
    summary: "Entries of the record after a number, oldest first",
    description: "Less those that your roles may not see.",
    answers: { 200: z.array(RecordEntry), 304: null },
    headers: { ...pageHeaders, ...tagHeaders },
  },
  { params: projectParams, querystring, headers: taggedHeaders },
);

const path = "/api/projects/:projectId/record";

export const recordRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-record" }, schema: reading }, async (request, reply) => {
    const { after, limit: most } = request.query;
    const page = await readRecord(app.database, partOfSender(request), { after, limit: most });
    linkNext(request, reply, page);
    const tag = tagOf(page.next, ...page.items.map((entry) => entry.tag));
    return sendTaggedText(request, reply, tag, () => `[${page.items.map(({ text }) => text).join(",")}]`);
  });
};
