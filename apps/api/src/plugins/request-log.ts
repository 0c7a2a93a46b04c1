import fp from "fastify-plugin";

/** One line a request with named fields only: no headers, no bodies, no query, so no cookie, token or password. */
export default fp(
  async (app) => {
    app.addHook("onResponse", async (request, reply) => {
      request.log.info(
        {
          method: request.method,
          route: request.routeOptions.url ?? "none",
          status: reply.statusCode,
          ms: Math.round(reply.elapsedTime),
          from: request.ip,
          person: request.signedIn?.person.id,
          project: request.part?.projectId,
        },
        "answered",
      );
    });
  },
  { name: "request-log", dependencies: ["signed-in", "part"] },
);
