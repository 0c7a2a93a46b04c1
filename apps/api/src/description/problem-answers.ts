import { problems, type ProblemCode } from "@cornerway/schema";
import type { RouteOptions } from "fastify";

/**
 * Every problem a route may answer with: those of every route, those that follow from what kind of route it is (as the
 * plug-ins decide it), and its own.
 */
export function problemsOf({ url, method, config, schema }: RouteOptions, own: readonly ProblemCode[]): ProblemCode[] {
  const codes: ProblemCode[] = ["internal", "unready", ...own];
  if (!url.startsWith("/api/")) return [...new Set(codes)];
  codes.push("too-many-tries", "version-unknown");
  if (config?.open !== true) codes.push("not-signed-in", "token-refused", "scope-refused", "credentials-doubled");
  const isOfReaders = config?.byLink === true || (config?.act !== undefined && method === "GET");
  if (config?.open !== true && !isOfReaders) codes.push("reading-only");
  if (method !== "GET") codes.push("origin-refused");
  if (method !== "GET" && config?.open !== true) codes.push("csrf-refused");
  if (config?.act !== undefined) codes.push("not-found", "role-refused", "not-confirmed");
  if (config?.administrator === true) codes.push("administrator-only");
  if (schema?.params !== undefined || schema?.querystring !== undefined) codes.push("body-invalid");
  if (schema?.headers !== undefined) codes.push("body-invalid");
  if (schema?.body !== undefined) codes.push("body-invalid", "body-not-json", "body-too-large", "media-type");
  return [...new Set(codes)];
}

/** The answers of a route for its problems, one a status, each naming its codes: RFC 9457. */
export function problemAnswers(codes: readonly ProblemCode[]): Record<string, object> {
  const statuses = [...new Set(codes.map((code) => problems[code].status))];
  return Object.fromEntries(
    statuses.map((status) => {
      const ofStatus = codes.filter((code) => problems[code].status === status).toSorted();
      const description = ofStatus.map((code) => `\`${code}\` ${problems[code].title}`).join(" · ");
      return [status, { description, content: { "application/problem+json": { schema: problemWith(ofStatus) } } }];
    }),
  );
}

const problemWith = (codes: readonly ProblemCode[]) => ({
  allOf: [
    { $ref: "#/components/schemas/Problem" },
    { type: "object", properties: { code: { type: "string", enum: codes } } },
  ],
});
