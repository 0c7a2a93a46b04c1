import { may, ProjectId, type Act } from "@cornerway/schema";
import type { FastifyRequest } from "fastify";
import fp from "fastify-plugin";
import type { Part } from "../services/part.ts";
import { readRoles } from "../store/person-rows.ts";
import { sendProblem } from "./problems.ts";
import { signedInOf } from "./signed-in.ts";

declare module "fastify" {
  interface FastifyRequest {
    part: Part | null;
  }
  interface FastifyContextConfig {
    /** On routes of one project: what the sender does there. */
    act?: Act;
  }
}

/** On routes of one project: whoever has no part in it is told there is nothing; a role that may not do the act is refused. */
export default fp(
  async (app) => {
    app.decorateRequest("part", null);
    app.addHook("onRequest", async (request, reply) => {
      const { act } = request.routeOptions.config;
      if (act === undefined || request.is404) return;
      const part = await partOf(request);
      if (part === null) return sendProblem(reply, { code: "not-found" });
      if (!may(part.roles, act)) return sendProblem(reply, { code: "role-refused" });
      request.part = part;
    });
  },
  { name: "part", dependencies: ["database", "signed-in"] },
);

/** The sender's part in the project of the address. Throws on a route that names no act. */
export function partOfSender(request: FastifyRequest): Part {
  if (request.part === null) throw new Error("partOfSender: this route names no act");
  return request.part;
}

async function partOf(request: FastifyRequest): Promise<Part | null> {
  const { person } = signedInOf(request);
  const params: unknown = request.params;
  const projectId =
    typeof params === "object" && params !== null && "projectId" in params ? params.projectId : undefined;
  const parsed = ProjectId.safeParse(projectId);
  if (!parsed.success) return null;
  const roles = await readRoles(request.server.database.connection, parsed.data, person.id);
  return roles.length === 0 ? null : { projectId: parsed.data, person, roles };
}
