import { timingSafeEqual } from "node:crypto";
import cookie from "@fastify/cookie";
import type {} from "@fastify/websocket"; // gives requests `ws`
import type { FastifyReply, FastifyRequest } from "fastify";
import fp from "fastify-plugin";
import { csrfTokenOf, sessionIdOf, sessionLastsMs, type From } from "../services/sign-in.ts";
import type { FoundToken } from "../store/access-token-rows.ts";
import type { FoundSession } from "../store/reads.ts";
import { markSeen, type SignedInPerson } from "../store/session-rows.ts";
import type {} from "./access-token.ts"; // gives requests `accessToken`
import { isOfApi } from "./is-of-api.ts";
import { sendProblem } from "./problems.ts";
import { projectOf } from "./project-of.ts";

/** Who sends a request, by the session in their cookie or by an access token. */
export interface SignedIn {
  person: SignedInPerson;
  token: string;
  sessionId: string;
  /** What they hold in the project of the address, where it was read along with the session. */
  inProject?: Pick<FoundSession, "held" | "projectThere">;
}

declare module "fastify" {
  interface FastifyRequest {
    signedIn: SignedIn | null;
  }
  interface FastifyContextConfig {
    /** Open to people who are not signed in. */
    open?: boolean;
    /** Open to readers by a link as well, though it is no reading of a project. */
    byLink?: boolean;
  }
}

/** Off this machine a browser takes it only encrypted, for this host alone and all of it: RFC 6265bis, prefix `__Host-`. */
const cookieName = (request: FastifyRequest): string =>
  isOnThisMachine(request) ? "cornerway_session" : "__Host-cornerway_session";

/**
 * Reads the session of every request under /api, and refuses those that need one and have none, writes without the
 * session's CSRF token, and writes and sockets that another site's page sends.
 */
export default fp(
  async (app) => {
    await app.register(cookie);
    app.decorateRequest("signedIn", null);
    app.addHook("onRequest", async (request, reply) => {
      if (!isOfApi(request)) return;
      if (!isRead(request) && !comesFromHere(request)) return sendProblem(reply, { code: "origin-refused" });
      if (request.accessToken !== null) {
        request.signedIn = byToken(request.accessToken);
        return;
      }
      request.signedIn = await whoSends(request);
      if (request.routeOptions.config.open === true || request.is404) return;
      if (request.signedIn === null) return sendProblem(reply, { code: "not-signed-in" });
      if (request.signedIn.person.byLink && !opensByLink(request)) return sendProblem(reply, { code: "reading-only" });
      if (!request.ws && !isRead(request) && !carriesToken(request, request.signedIn))
        return sendProblem(reply, { code: "csrf-refused" });
    });
  },
  { name: "signed-in", dependencies: ["database", "access-token"] },
);

/** Whoever acts by an access token has no session: nothing that hangs on one is open to tokens. */
const byToken = ({ id, person }: FoundToken): SignedIn => ({ person, token: "", sessionId: `access token ${id}` });

/** The sender of a request that has passed the hook. Throws on a route that is open to everyone. */
export function signedInOf(request: FastifyRequest): SignedIn {
  if (request.signedIn === null) throw new Error("signedInOf: this route lets in people who are not signed in");
  return request.signedIn;
}

const tokenOf = (request: FastifyRequest): string | undefined => request.cookies[cookieName(request)];

/** From where a request comes, as far as a session keeps it. */
export const fromOf = (request: FastifyRequest): From => ({
  ip: request.ip,
  agent: request.headers["user-agent"],
  before: tokenOf(request),
});

export const setSessionCookie = (request: FastifyRequest, reply: FastifyReply, token: string): FastifyReply =>
  reply.setCookie(cookieName(request), token, { ...cookieOptions(request), maxAge: sessionLastsMs / 1000 });

export const clearSessionCookie = (request: FastifyRequest, reply: FastifyReply): FastifyReply =>
  reply.clearCookie(cookieName(request), cookieOptions(request));

/** Not for scripts, not for other sites' requests, and only encrypted unless the browser is on this machine. */
export const cookieOptions = (request: FastifyRequest) =>
  ({ path: "/", httpOnly: true, sameSite: "lax", secure: !isOnThisMachine(request) }) as const;

const loopback = new Set(["localhost", "127.0.0.1", "::1", "[::1]"]);
const isOnThisMachine = (request: FastifyRequest): boolean => loopback.has(request.hostname);

const isRead = (request: FastifyRequest): boolean => ["GET", "HEAD"].includes(request.method) && !request.ws;

/** Whoever reads by a link reads in their project as far as its reader may, and follows it; nothing else is theirs. */
const opensByLink = (request: FastifyRequest): boolean => {
  const { act, byLink } = request.routeOptions.config;
  return byLink === true || (act !== undefined && (isRead(request) || request.ws));
};

/** Browsers name the origin on every write and every socket; on a write, programs that are no browsers may leave it out. */
function comesFromHere({ headers, host, ws }: FastifyRequest): boolean {
  if (headers.origin === undefined) return !ws;
  return URL.canParse(headers.origin) && new URL(headers.origin).host === host;
}

async function whoSends(request: FastifyRequest): Promise<SignedIn | null> {
  const token = tokenOf(request);
  if (token === undefined || token.length > 100) return null;
  const sessionId = sessionIdOf(token);
  const { connection, reads } = request.server.database;
  const found = await reads.session({ sessionId, projectId: projectOf(request) ?? null });
  if (found === null) return null;
  const { person, held, projectThere, unseen } = found;
  // Nobody waits for this, and a session that was not seen for a moment is no worse for it.
  if (unseen) markSeen(connection, sessionId).catch((err: unknown) => request.log.warn({ err }, "not written as seen"));
  return { person, token, sessionId, inProject: { held, projectThere } };
}

function carriesToken({ headers }: FastifyRequest, { token }: SignedIn): boolean {
  const expected = Buffer.from(csrfTokenOf(token));
  const given = Buffer.from(String(headers["csrf-token"] ?? ""));
  return given.length === expected.length && timingSafeEqual(given, expected);
}
