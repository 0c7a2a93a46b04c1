import { Session, SignIn } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { described } from "../description/described.ts";
import { answer } from "../plugins/problems.ts";
import { clearSessionCookie, fromOf, setSessionCookie, signedInOf } from "../plugins/signed-in.ts";
import { guardedSignIn } from "../services/guarded-sign-in.ts";
import { sessionOf } from "../services/sign-in.ts";
import { deleteSession } from "../store/session-rows.ts";

const signingIn = described(
  {
    tag: "signing in",
    id: "signIn",
    summary: "Sign in; the session comes as a cookie",
    answers: { 201: Session },
    problems: ["sign-in-refused", "busy"],
  },
  { body: SignIn },
);

const reading = described(
  { tag: "signing in", id: "readSession", summary: "Who is signed in", answers: { 200: Session } },
  {},
);

const signingOut = described({ tag: "signing in", id: "signOut", summary: "Sign out", answers: { 204: null } }, {});

export const sessionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.post("/api/session", { config: { open: true }, schema: signingIn }, async (request, reply) => {
    const outcome = await guardedSignIn(app.database.connection, request.body, fromOf(request));
    if (!outcome.ok) return answer(reply, outcome);
    setSessionCookie(request, reply, outcome.value.token);
    return reply.code(201).send(outcome.value.session);
  });

  app.get("/api/session", { config: { byLink: true }, schema: reading }, async (request) => {
    const { person, token } = signedInOf(request);
    return sessionOf(person, token);
  });

  app.delete("/api/session", { config: { byLink: true }, schema: signingOut }, async (request, reply) => {
    await deleteSession(app.database.connection, signedInOf(request).sessionId);
    clearSessionCookie(request, reply);
    return reply.code(204).send();
  });
};
