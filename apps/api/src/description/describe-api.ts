import fastify from "fastify";
import descriptionPlugin from "../plugins/description.ts";
import validationPlugin from "../plugins/validation.ts";
import { allRoutes } from "../routes/all-routes.ts";

/** The API description without a database or anything else that runs: what the typed client of the web is made from. */
export async function describeApi(): Promise<object> {
  const app = fastify();
  await app.register(validationPlugin);
  await app.register(descriptionPlugin);
  for (const routes of allRoutes) await app.register(routes);
  await app.ready();
  const document = app.swagger();
  await app.close();
  return document;
}
