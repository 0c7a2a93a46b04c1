import fp from "fastify-plugin";
import { requestIdHeader } from "../request-id.ts";

/** Every answer names the id under which its request stands in the log. */
export default fp(
  async (app) => {
    app.addHook("onRequest", async (request, reply) => {
      reply.header(requestIdHeader, request.id);
    });
  },
  { name: "request-id" },
);
