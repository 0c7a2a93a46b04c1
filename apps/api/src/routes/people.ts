import {
  InvitationId,
  InvitationMade,
  NewInvitation,
  PersonId,
  ProjectId,
  ProjectPeople,
  RemovePart,
  SetExpiry,
} from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { invitationLetter } from "../mail/letters.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { invite, withdrawInvitation } from "../services/invite.ts";
import { signedHead, withSigner } from "../services/prove-record.ts";
import { readPeople } from "../services/read-people.ts";
import { confirmEngineer, leaveProject, removePart, setExpiry } from "../services/see-to-people.ts";
import { readProjectRow } from "../store/project-rows.ts";

const path = "/api/projects/:projectId";
const tag = "projects";
const ofPerson = z.strictObject({ projectId: ProjectId, personId: PersonId });

const reading = described(
  { tag, id: "readPeople", summary: "Who has a part in a project", answers: { 200: ProjectPeople } },
  { params: projectParams },
);
const inviting = described(
  {
    tag,
    id: "invite",
    summary: "Ask someone in by a one-time link",
    description: "The link goes to the address by letter and is told here once. It is good for seven days.",
    answers: { 201: InvitationMade },
    problems: ["already-in", "roles-exclude"],
  },
  { params: projectParams, body: NewInvitation },
);
const withdrawing = described(
  { tag, id: "withdrawInvitation", summary: "Take an invitation back", answers: { 204: null } },
  { params: z.strictObject({ projectId: ProjectId, invitationId: InvitationId }) },
);
const confirming = described(
  { tag, id: "confirmEngineer", summary: "Say who the engineer is", answers: { 204: null } },
  { params: ofPerson, body: z.strictObject({}).nullish() },
);
const removing = described(
  { tag, id: "removePart", summary: "Take a part away", answers: { 204: null }, problems: ["last-owner"] },
  { params: ofPerson, body: RemovePart },
);
const leaving = described(
  { tag, id: "leaveProject", summary: "Lay one's own part down", answers: { 204: null }, problems: ["last-owner"] },
  { params: projectParams, body: RemovePart },
);
const expiring = described(
  { tag, id: "setExpiry", summary: "Say when a reader's part ends", answers: { 204: null } },
  { params: ofPerson, body: SetExpiry },
);

export const peopleRoutes: FastifyPluginAsyncZod = async (app) => {
  const db = app.database.connection;

  app.get(`${path}/people`, { config: { act: "read-people" }, schema: reading }, async (request) =>
    readPeople(db, partOfSender(request).projectId, signedInOf(request).person),
  );

  app.post(`${path}/invitations`, { config: { act: "invite" }, schema: inviting }, async (request, reply) => {
    const part = partOfSender(request);
    const invited = await invite(app.database, part, request.body);
    if (!invited.ok) return answer(reply, invited);
    const { invitation, path: linkPath } = invited.value;
    const { name } = await readProjectRow(db, part.projectId);
    const head = await withSigner({ db, part, secretsKey: app.recordSigning.secretsKey }, signedHead);
    const letter = invitationLetter(invitation, name, app.addressOf(linkPath), head.ok ? head.value : null);
    const letterSent = await app.sendLetter(letter);
    return reply.code(201).send({ invitation, path: linkPath, letterSent });
  });

  app.delete(
    `${path}/invitations/:invitationId`,
    { config: { act: "invite" }, schema: withdrawing },
    async (request, reply) =>
      answer(reply, await withdrawInvitation(app.database, partOfSender(request), request.params.invitationId), 204),
  );

  app.post(
    `${path}/people/:personId/confirm`,
    { config: { act: "confirm-engineer" }, schema: confirming },
    async (request, reply) =>
      answer(reply, await confirmEngineer(app.database, partOfSender(request), request.params.personId), 204),
  );

  app.post(
    `${path}/people/:personId/remove`,
    { config: { act: "remove-person" }, schema: removing },
    async (request, reply) => {
      const { personId } = request.params;
      return answer(reply, await removePart(app.database, partOfSender(request), personId, request.body.role), 204);
    },
  );

  app.post(`${path}/leave`, { config: { act: "leave-project" }, schema: leaving }, async (request, reply) =>
    answer(reply, await leaveProject(app.database, partOfSender(request), request.body.role), 204),
  );

  app.post(
    `${path}/people/:personId/expiry`,
    { config: { act: "set-expiry" }, schema: expiring },
    async (request, reply) => {
      const { personId } = request.params;
      return answer(reply, await setExpiry(app.database, partOfSender(request), personId, request.body.expiresAt), 204);
    },
  );
};
