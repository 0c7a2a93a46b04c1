import { LinkUsed, OpenedLink, OpenLink, ResetAsked, UseLink } from "@cornerway/schema";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { newPasswordLetter } from "../mail/letters.ts";
import { answer } from "../plugins/problems.ts";
import { cookieOptions, fromOf, setSessionCookie } from "../plugins/signed-in.ts";
import { countAsking, makePasswordLink } from "../services/ask-new-password.ts";
import { openLink, readLink, ticketLastsMs } from "../services/open-link.ts";
import { openSession } from "../services/sign-in.ts";
import { useLink } from "../services/use-link.ts";

const path = "/api/link";

/** Off this machine a browser takes it only encrypted: RFC 6265bis, prefix `__Secure-`. */
const cookieName = (request: FastifyRequest): string =>
  cookieOptions(request).secure ? "__Secure-cornerway_link" : "cornerway_link";

const opening = described(
  {
    tag: "signing in",
    id: "openLink",
    summary: "Open a one-time link: its secret is taken for a cookie",
    answers: { 201: OpenedLink },
    problems: ["link-gone"],
  },
  { body: OpenLink },
);

const reading = described(
  {
    tag: "signing in",
    id: "readLink",
    summary: "What the opened link is for",
    answers: { 200: OpenedLink },
    problems: ["link-gone"],
  },
  {},
);

const using = described(
  {
    tag: "signing in",
    id: "useLink",
    summary: "Use the opened link: join, become the first administrator, or set a new password",
    answers: { 201: LinkUsed },
    problems: ["link-gone", "password-refused", "sign-in-refused", "roles-exclude", "already-in", "busy"],
  },
  { body: UseLink },
);

const asking = described(
  {
    tag: "signing in",
    id: "askNewPassword",
    summary: "Have a link to set a new password sent to an address",
    description: "The answer and its time are the same whether anyone has that address or not.",
    answers: { 202: null },
  },
  { body: ResetAsked },
);

export const linkRoutes: FastifyPluginAsyncZod = async (app) => {
  const open = { open: true };

  app.post(path, { config: open, schema: opening }, async (request, reply) => {
    const from = { ip: request.ip, person: request.signedIn?.person };
    const outcome = await openLink(app.database.connection, request.body.secret, from);
    if (!outcome.ok) return answer(reply, outcome);
    setTicket(request, reply, outcome.value.ticket);
    return reply.code(201).send(outcome.value.link);
  });

  app.get(path, { config: open, schema: reading }, async (request, reply) =>
    answer(reply, await readLink(app.database.connection, ticketOf(request), request.signedIn?.person)),
  );

  app.post(`${path}/use`, { config: open, schema: using }, async (request, reply) => {
    const from = { ...fromOf(request), person: request.signedIn?.person };
    const used = await useLink(app.database, ticketOf(request), request.body, from);
    if (!used.ok) return answer(reply, used);
    const { person, projectId } = used.value;
    const { token, session } = await openSession(app.database.connection, person, from);
    reply.clearCookie(cookieName(request), ticketOptions(request));
    setSessionCookie(request, reply, token);
    return reply.code(201).send({ session, projectId });
  });

  app.post("/api/new-password", { config: open, schema: asking }, async (request, reply) => {
    const { email } = request.body;
    const counted = await countAsking(app.database.connection, email, request.ip);
    if (!counted.ok) return answer(reply, counted);
    app.afterwards(async () => {
      const made = await makePasswordLink(app.database.connection, email);
      if (made !== null) await app.sendLetter(newPasswordLetter(made.person, app.addressOf(made.path)));
    });
    return reply.code(202).send();
  });
};

/** Sent to the routes of the link alone, and to them only from pages of this origin. */
const ticketOptions = (request: FastifyRequest) => ({ ...cookieOptions(request), path, sameSite: "strict" as const });

const setTicket = (request: FastifyRequest, reply: FastifyReply, ticket: string) =>
  reply.setCookie(cookieName(request), ticket, { ...ticketOptions(request), maxAge: ticketLastsMs / 1000 });

const ticketOf = (request: FastifyRequest): string | undefined => {
  const ticket = request.cookies[cookieName(request)];
  return ticket === undefined || ticket.length > 100 ? undefined : ticket;
};
