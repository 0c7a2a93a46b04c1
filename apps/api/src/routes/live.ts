import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { converse } from "../realtime/converse.ts";
import { Line } from "../realtime/line.ts";
import { authorOf } from "../services/part.ts";

const path = "/api/projects/:projectId/live";

const living = described(
  {
    tag: "record",
    id: "follow",
    summary: "Follow a project as it happens, by WebSocket",
    description: "The first message is `resume` with the last number seen; what follows is in `cornerway.schema.json`.",
    answers: { 101: null },
    problems: ["origin-refused"],
  },
  { params: projectParams },
);

export const liveRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(
    path,
    { websocket: true, config: { act: "read-record", scope: "none" }, schema: living },
    (socket, request) => {
      const part = partOfSender(request);
      const line = new Line(socket, part, signedInOf(request).sessionId, authorOf(part, "read-record").role);
      converse(socket, line, app.live, request.log);
    },
  );
};
