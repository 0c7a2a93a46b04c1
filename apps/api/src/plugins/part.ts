import type { Act } from "@cornerway/schema";
import type { FastifyRequest } from "fastify";
import fp from "fastify-plugin";
import { partRefusal, type Part } from "../services/part.ts";
import { readHeld } from "../store/membership-rows.ts";
import { projectExists } from "../store/new-project.ts";
import { sendProblem } from "./problems.ts";
import { projectOf } from "./project-of.ts";
import { signedInOf } from "./signed-in.ts";

declare module "fastify" {
  interface FastifyRequest {
    part: Part | null;
  }
  interface FastifyContextConfig {
    /** On routes of one project: what the sender does there. */
    act?: Act;
    /** On routes for administrators of the service. */
    administrator?: boolean;
  }
}

/**
 * On routes of one project: whoever has no part in it is told there is nothing; a role that may not do the act is
 * refused, and so is an engineer who waits to be confirmed. Routes for administrators are refused to everyone else.
 */
export default fp(
  async (app) => {
    app.decorateRequest("part", null);
    app.addHook("onRequest", async (request, reply) => {
      const { act, administrator } = request.routeOptions.config;
      if (request.is404) return;
      if (administrator === true && !signedInOf(request).person.administrator)
        return sendProblem(reply, { code: "administrator-only" });
      if (act === undefined) return;
      const projectId = projectOf(request);
      if (projectId === undefined) return sendProblem(reply, { code: "not-found" });
      const { person } = signedInOf(request);
      const { held, projectThere } = await heldBy(request, projectId, person.id);
      const code = partRefusal(held, person.administrator, act);
      if (code !== undefined) return sendProblem(reply, { code });
      if (!projectThere) return sendProblem(reply, { code: "not-found" });
      request.part = { projectId, person, roles: held.roles, token: request.accessToken?.prefix };
    });
  },
  { name: "part", dependencies: ["database", "signed-in"] },
);

/** The sender's part in the project of the address. Throws on a route that names no act. */
export function partOfSender(request: FastifyRequest): Part {
  if (request.part === null) throw new Error("partOfSender: this route names no act");
  return request.part;
}

/** Read along with a session; of an access token it is asked for here. */
async function heldBy({ server, signedIn }: FastifyRequest, projectId: string, personId: string) {
  if (signedIn?.inProject !== undefined) return signedIn.inProject;
  const db = server.database.connection;
  const held = await readHeld(db, projectId, personId);
  return { held, projectThere: held.roles.length > 0 || (await projectExists(db, projectId)) };
}
