import { scopeOfAct, type TokenScope } from "@cornerway/schema";
import type { FastifyContextConfig, FastifyReply, FastifyRequest } from "fastify";
import fp from "fastify-plugin";
import { secretHash } from "../services/secret.ts";
import { useToken, type FoundToken } from "../store/access-token-rows.ts";
import { countTry } from "../store/rate-windows.ts";
import { isOfApi } from "./is-of-api.ts";
import { sendProblem } from "./problems.ts";

declare module "fastify" {
  interface FastifyRequest {
    /** The token a script sends; null where a browser sends its session, or nobody is signed in. */
    accessToken: FoundToken | null;
  }
  interface FastifyContextConfig {
    /** The scope a token needs here, where the route's act does not say; `none` where only a person by hand may. */
    scope?: TokenScope | "none";
  }
}

const windowMs = 60_000;
const mostWrongPerMinute = 30;
const bearer = /^Bearer ([\w-]{1,100})$/i;

/**
 * Reads the access token of a request under /api (RFC 6750). It acts as the person who made it, with what they may do
 * now, within its scopes, and only on routes that name a scope. Wrong tokens are counted by address for all processes.
 */
export default fp(
  async (app) => {
    app.decorateRequest("accessToken", null);
    app.addHook("onRequest", async (request, reply) => {
      const { authorization } = request.headers;
      const { open } = request.routeOptions.config;
      if (!isOfApi(request) || authorization === undefined || open === true || request.is404) return;
      if (request.headers.cookie?.includes("cornerway_session=") === true)
        return sendProblem(reply, { code: "credentials-doubled" });
      const token = await tokenOf(request, authorization);
      if (token === "too many") return sendProblem(reply, { code: "too-many-tries" });
      if (token === null) return refuseToken(reply);
      const scope = scopeOfRoute(request.routeOptions.config);
      if (scope === "none") return sendProblem(reply, { code: "scope-refused", detail: "this is done by hand only" });
      if (!token.scopes.includes(scope))
        return sendProblem(reply, { code: "scope-refused", detail: `this needs the scope ${scope}` });
      request.accessToken = token;
    });
  },
  { name: "access-token", dependencies: ["database"] },
);

/** The scope a token needs for a route: its own, or its act's; nothing named is nothing allowed. */
export function scopeOfRoute(config: FastifyContextConfig): TokenScope | "none" {
  return config.scope ?? (config.act === undefined ? "none" : (scopeOfAct[config.act] ?? "none"));
}

async function tokenOf(request: FastifyRequest, authorization: string): Promise<FoundToken | "too many" | null> {
  const db = request.server.database.connection;
  const [, secret] = bearer.exec(authorization) ?? [];
  const found = secret === undefined ? null : await useToken(db, secretHash(secret));
  if (found !== null) return found;
  const tries = await countTry(db, `access token from ${request.ip}`, windowMs);
  return tries > mostWrongPerMinute ? "too many" : null;
}

/** RFC 6750 section 3: the answer says which scheme is wanted and what is wrong with what was sent. */
const refuseToken = (reply: FastifyReply): FastifyReply =>
  sendProblem(reply.header("www-authenticate", 'Bearer error="invalid_token"'), { code: "token-refused" });
