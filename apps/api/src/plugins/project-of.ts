import { ProjectId } from "@cornerway/schema";
import type { FastifyRequest } from "fastify";

/** The project in a request's address; undefined when it names none, or nothing that could be one. */
export function projectOf({ params }: FastifyRequest): string | undefined {
  const projectId: unknown =
    typeof params === "object" && params !== null && "projectId" in params ? params.projectId : undefined;
  return projectId === undefined ? undefined : ProjectId.safeParse(projectId).data;
}
