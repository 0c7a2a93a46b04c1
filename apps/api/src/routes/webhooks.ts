import { NewWebhook, ProjectId, Webhook, WebhookDelivery, WebhookMade } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { pageHeaders, pageQuery, sendPage } from "../description/paging.ts";
import { projectParams } from "../description/params.ts";
import { repeatableHeaders, repeatableOf } from "../description/repeatable.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { endWebhook, goOnTelling, makeWebhook, readTold } from "../services/webhooks.ts";
import { readWebhooks } from "../store/webhook-rows.ts";

const path = "/api/projects/:projectId/webhooks";
const params = z.strictObject({ projectId: ProjectId, webhookId: z.uuid() });

const listing = described(
  { tag: "webhooks", id: "listWebhooks", summary: "The webhooks of a project", answers: { 200: z.array(Webhook) } },
  { params: projectParams },
);

const making = described(
  {
    tag: "webhooks",
    id: "makeWebhook",
    summary: "Have an address told of the record",
    description: "It is told of what whoever made it may see. Its secret is shown this once.",
    answers: { 201: WebhookMade },
    problems: ["webhooks-off", "address-refused", "too-many-kept", "key-reused"],
  },
  { params: projectParams, headers: repeatableHeaders, body: NewWebhook },
);

const ending = described(
  { tag: "webhooks", id: "endWebhook", summary: "Take a webhook away", answers: { 204: null } },
  { params },
);

const resuming = described(
  { tag: "webhooks", id: "resumeWebhook", summary: "Set a stopped webhook going again", answers: { 200: Webhook } },
  { params, body: z.strictObject({}).nullish() },
);

const readingTold = described(
  {
    tag: "webhooks",
    id: "listDeliveries",
    summary: "What a webhook was told, the latest first",
    answers: { 200: z.array(WebhookDelivery) },
    headers: pageHeaders,
  },
  { params, querystring: pageQuery(z.uuid()) },
);

export const webhookRoutes: FastifyPluginAsyncZod = async (app) => {
  const { database } = app;
  const config = { act: "keep-webhooks" } as const;

  app.get(path, { config, schema: listing }, async (request) =>
    readWebhooks(database.connection, partOfSender(request).projectId),
  );

  app.post(path, { config, schema: making }, async (request, reply) => {
    const how = { settings: app.webhookSettings, repeatable: repeatableOf(request) };
    return answer(reply, await makeWebhook(database, partOfSender(request), request.body, how), 201);
  });

  app.delete(`${path}/:webhookId`, { config, schema: ending }, async (request, reply) =>
    answer(reply, await endWebhook(database, partOfSender(request), request.params.webhookId), 204),
  );

  app.post(`${path}/:webhookId/resume`, { config, schema: resuming }, async (request, reply) =>
    answer(reply, await goOnTelling(database, partOfSender(request), request.params.webhookId)),
  );

  app.get(`${path}/:webhookId/deliveries`, { config, schema: readingTold }, async (request, reply) => {
    const { after, limit } = request.query;
    const asked = { id: request.params.webhookId, after, limit };
    const outcome = await readTold(database.connection, partOfSender(request), asked);
    return outcome.ok ? sendPage(request, reply, outcome.value) : answer(reply, outcome);
  });
};
