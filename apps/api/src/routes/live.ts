import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { partOfSender } from "../plugins/part.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { converse } from "../realtime/converse.ts";
import { Line } from "../realtime/line.ts";
import { authorOf } from "../services/part.ts";

export const liveRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/projects/:projectId/live", { websocket: true, config: { act: "read-record" } }, (socket, request) => {
    const part = partOfSender(request);
    const line = new Line(socket, part, signedInOf(request).sessionId, authorOf(part, "read-record").role);
    converse(socket, line, app.live, request.log);
  });
};
