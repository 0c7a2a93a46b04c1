import { RecordEntry } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { afterNumber, limit, linkNext, pageHeaders } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { sendTagged, taggedHeaders, tagHeaders, tagOf } from "../description/tagged.ts";
import { partOfSender } from "../plugins/part.ts";
import { pageOf } from "../services/page.ts";
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
    const read = await readRecord(app.database.connection, partOfSender(request), { after, limit: most + 1 });
    const page = pageOf(read, most, ({ number }) => number);
    linkNext(request, reply, page);
    // An entry is never altered, but its payload may be withheld.
    const tag = tagOf(
      page.next,
      ...page.items.flatMap(({ number, head, payload }) => [number, head, payload === null ? 0 : 1]),
    );
    return sendTagged(request, reply, tag, page.items);
  });
};
