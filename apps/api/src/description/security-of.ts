import type { RouteOptions } from "fastify";
import { scopeOfRoute } from "../plugins/access-token.ts";

/** Where the two ways of saying who asks are described. */
export const securitySchemes = {
  session: {
    type: "apiKey",
    in: "cookie",
    name: "cornerway_session",
    description: "Of a browser; every write carries the `csrf-token` that `GET /api/session` gives.",
  },
  csrf: { type: "apiKey", in: "header", name: "csrf-token", description: "The token of the session, on every write." },
  token: { type: "http", scheme: "bearer", description: "An access token made on the account page, for scripts." },
} as const;

/** What a route asks of whoever sends: nothing where it is open; a session, on a write with its token; or an access token. */
export function securityOf({ url, method, config = {} }: RouteOptions): Record<string, string[]>[] {
  if (config.open === true || !url.startsWith("/api/")) return [];
  const scope = scopeOfRoute(config);
  const byHand = method === "GET" ? { session: [] } : { session: [], csrf: [] };
  return scope === "none" ? [byHand] : [byHand, { token: [scope] }];
}
