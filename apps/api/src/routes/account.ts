import {
  Account,
  LicenceChange,
  NameChange,
  PasswordChange,
  SignedInPlace,
  StampWordingChange,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { passwordChangedLetter } from "../mail/letters.ts";
import { answer, sendProblem } from "../plugins/problems.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { changePassword } from "../services/change-password.ts";
import { readLicence, readStampWording, updateLicence, updateName, updateStampWording } from "../store/person-rows.ts";
import { deleteSessionByHandle, deleteSessionsOf, readSessions } from "../store/session-rows.ts";

const path = "/api/account";
const tag = "account";
const params = z.strictObject({ sessionId: z.uuid() });

const reading = described({ tag, id: "readAccount", summary: "Your account", answers: { 200: Account } }, {});
const naming = described(
  { tag, id: "changeName", summary: "Change your name", answers: { 204: null } },
  { body: NameChange },
);
const stating = described(
  {
    tag,
    id: "stateLicence",
    summary: "State your licence as an engineer, or take the statement back",
    description: "Shown as stated by you; the service verifies nothing.",
    answers: { 204: null },
  },
  { body: LicenceChange },
);
const wording = described(
  {
    tag,
    id: "wordStamps",
    summary: "State how your office words the four dispositions of a stamp",
    description: "The meaning stays one of the four; a stamp keeps both.",
    answers: { 204: null },
  },
  { body: StampWordingChange },
);
const changingPassword = described(
  {
    tag,
    id: "changePassword",
    summary: "Change your password; your other sessions end",
    answers: { 204: null },
    problems: ["present-password-wrong", "password-refused", "busy"],
  },
  { body: PasswordChange },
);
const listing = described(
  { tag, id: "listSessions", summary: "Where you are signed in", answers: { 200: z.array(SignedInPlace) } },
  {},
);
const ending = described(
  { tag, id: "endSession", summary: "End one of your sessions", answers: { 204: null }, problems: ["not-found"] },
  { params },
);
const endingOthers = described(
  { tag, id: "endOtherSessions", summary: "End all your sessions but this one", answers: { 204: null } },
  {},
);

export const accountRoutes: FastifyPluginAsyncZod = async (app) => {
  const db = app.database.connection;

  app.get(path, { schema: reading }, async (request) => {
    const { id, name, email, administrator } = signedInOf(request).person;
    return {
      person: { id, name, email },
      administrator,
      licence: await readLicence(db, id),
      stampWording: await readStampWording(db, id),
    };
  });

  app.post(`${path}/name`, { schema: naming }, async (request, reply) => {
    await updateName(db, signedInOf(request).person.id, request.body.name.trim());
    return reply.code(204).send();
  });

  app.post(`${path}/licence`, { schema: stating }, async (request, reply) => {
    await updateLicence(db, signedInOf(request).person.id, request.body.licence);
    return reply.code(204).send();
  });

  app.post(`${path}/stamp-wording`, { schema: wording }, async (request, reply) => {
    await updateStampWording(db, signedInOf(request).person.id, request.body.stampWording);
    return reply.code(204).send();
  });

  app.post(`${path}/password`, { schema: changingPassword }, async (request, reply) => {
    const { person, sessionId } = signedInOf(request);
    const outcome = await changePassword(app.database, { personId: person.id, sessionId }, request.body);
    if (!outcome.ok) return answer(reply, outcome);
    app.afterwards(() => app.sendLetter(passwordChangedLetter(person)));
    return reply.code(204).send();
  });

  app.get(`${path}/sessions`, { schema: listing }, async (request) => {
    const { person, sessionId } = signedInOf(request);
    return readSessions(db, person.id, sessionId);
  });

  app.delete(`${path}/sessions`, { schema: endingOthers }, async (request, reply) => {
    const { person, sessionId } = signedInOf(request);
    await deleteSessionsOf(db, person.id, sessionId);
    return reply.code(204).send();
  });

  app.delete(`${path}/sessions/:sessionId`, { schema: ending }, async (request, reply) => {
    const ended = await deleteSessionByHandle(db, signedInOf(request).person.id, request.params.sessionId);
    return ended ? reply.code(204).send() : sendProblem(reply, { code: "not-found" });
  });
};
