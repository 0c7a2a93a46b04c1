import { PressStamp, Stamp, StampNow } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { askPasswordAgain } from "../services/ask-password-again.ts";
import { pressStamp } from "../services/press-stamp.ts";
import { readStamps } from "../services/read-stamps.ts";

const path = "/api/projects/:projectId/stamps";

const listing = described(
  {
    tag: "review",
    id: "listStamps",
    summary: "The stamps, each with whether it is still on what is there",
    answers: { 200: z.array(StampNow) },
  },
  { params: projectParams },
);

const pressing = described(
  {
    tag: "review",
    id: "pressStamp",
    summary: "Stamp the latest revision, or one item of it",
    description:
      "Carries the two digests on the engineer's screen, and is refused when the revision has others; asks for the password again.",
    answers: { 201: Stamp },
    problems: [
      "present-password-wrong",
      "busy",
      "id-reused",
      "revision-superseded",
      "already-answered",
      "assessment-pending",
      "digest-mismatch",
      "element-unknown",
      "stamp-not-open",
    ],
  },
  { params: projectParams, body: PressStamp },
);

export const stampRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { config: { act: "read-revisions" }, schema: listing }, async (request) =>
    readStamps(app.database.connection, partOfSender(request)),
  );

  app.post(path, { config: { act: "press-stamp" }, schema: pressing }, async (request, reply) => {
    const part = partOfSender(request);
    const { stamp, password } = request.body;
    const asked = { password, pointer: "/password" };
    const known = await askPasswordAgain(app.database.connection, part.person.id, asked);
    if (!known.ok) return answer(reply, known);
    return answer(reply, await pressStamp(app.database, part, stamp), 201);
  });
};
