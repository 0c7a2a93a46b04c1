import fastify from "fastify";
import databasePlugin from "../plugins/database.ts";
import descriptionPlugin from "../plugins/description.ts";
import validationPlugin from "../plugins/validation.ts";
import { allRoutes } from "../routes/all-routes.ts";

/** Routes hold on to a database; to be described they need not reach one. */
const neverAsked = "postgresql://127.0.0.1:1/none";

/** The API description without a database or anything else that runs: what the typed client of the web is made from. */
export async function describeApi(): Promise<object> {
  const app = fastify();
  await app.register(validationPlugin);
  await app.register(databasePlugin, { url: neverAsked });
  await app.register(descriptionPlugin);
  for (const routes of allRoutes) await app.register(routes);
  await app.ready();
  const document = app.swagger();
  await app.close();
  return document;
}
