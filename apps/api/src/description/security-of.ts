import type { RouteOptions } from "fastify";

/** Where the two ways of saying who asks are described. */
export const securitySchemes = {
  session: {
    type: "apiKey",
    in: "cookie",
    name: "cornerway_session",
    description: "Of a browser; every write carries the `csrf-token` that `GET /api/session` gives.",
  },
  csrf: { type: "apiKey", in: "header", name: "csrf-token", description: "The token of the session, on every write." },
} as const;

/** What a route asks of whoever sends: nothing where it is open, a session, and on a write its token too. */
export function securityOf({ url, method, config }: RouteOptions): Record<string, string[]>[] {
  if (config?.open === true || !url.startsWith("/api/")) return [];
  return [method === "GET" ? { session: [] } : { session: [], csrf: [] }];
}
