import { SignIn } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { answer } from "../plugins/problems.ts";
import { clearSessionCookie, setSessionCookie, signedInOf, tokenOf } from "../plugins/signed-in.ts";
import { guardedSignIn } from "../services/guarded-sign-in.ts";
import { sessionOf } from "../services/sign-in.ts";
import { deleteSession } from "../store/session-rows.ts";

export const sessionRoutes: FastifyPluginAsyncZod = async (app) => {
  app.post("/api/session", { config: { open: true }, schema: { body: SignIn } }, async (request, reply) => {
    const from = { ip: request.ip, before: tokenOf(request) };
    const outcome = await guardedSignIn(app.database.connection, request.body, from);
    if (!outcome.ok) return answer(reply, outcome);
    setSessionCookie(request, reply, outcome.value.token);
    return reply.code(201).send(outcome.value.session);
  });

  app.get("/api/session", async (request) => {
    const { person, token } = signedInOf(request);
    return sessionOf(person, token);
  });

  app.delete("/api/session", async (request, reply) => {
    await deleteSession(app.database.connection, signedInOf(request).sessionId);
    clearSessionCookie(request, reply);
    return reply.code(204).send();
  });
};
