import { schemeVersion } from "@cornerway/schema";
import fp from "fastify-plugin";
import { sendProblem } from "./problems.ts";

/** A page loaded before an upgrade says in `scheme-version` what its operations are written for; it is told to reload. */
export default fp(
  async (app) => {
    app.addHook("onRequest", async (request, reply) => {
      const version = request.headers["scheme-version"];
      if (version === undefined || version === String(schemeVersion)) return;
      return sendProblem(reply, {
        code: "version-unknown",
        detail: `this service writes version ${schemeVersion}; reload the page`,
      });
    });
  },
  { name: "scheme-version" },
);
