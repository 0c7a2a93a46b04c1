import { NewStamp, Stamp } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { pressStamp } from "../services/press-stamp.ts";

const pressing = described(
  {
    tag: "review",
    id: "pressStamp",
    summary: "Stamp the latest revision",
    description: "Carries the two digests on the engineer's screen, and is refused when the revision has others.",
    answers: { 201: Stamp },
    problems: [
      "id-reused",
      "revision-superseded",
      "already-answered",
      "assessment-pending",
      "digest-mismatch",
      "stamp-not-open",
    ],
  },
  { params: projectParams, body: NewStamp },
);

export const stampRoutes: FastifyPluginAsyncZod = async (app) => {
  app.post(
    "/api/projects/:projectId/stamps",
    { config: { act: "press-stamp" }, schema: pressing },
    async (request, reply) => answer(reply, await pressStamp(app.database, partOfSender(request), request.body), 201),
  );
};
