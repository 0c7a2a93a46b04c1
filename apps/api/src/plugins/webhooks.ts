import fp from "fastify-plugin";
import type { WebhookSettings } from "../services/webhooks.ts";

declare module "fastify" {
  interface FastifyInstance {
    webhookSettings: WebhookSettings;
  }
}

/** What the configuration says of webhooks, for the routes that make them. */
export default fp(
  async (app, { settings }: { settings: WebhookSettings }) => {
    app.decorate("webhookSettings", settings);
  },
  { name: "webhooks" },
);
