import fastify from "fastify";
import databasePlugin from "../../src/plugins/database.ts";
import validationPlugin from "../../src/plugins/validation.ts";
import { allRoutes } from "../../src/routes/all-routes.ts";

/** Method and address of every route, as Fastify itself tells them when they are registered. */
export async function registeredRoutes(): Promise<string[]> {
  const found: string[] = [];
  const app = fastify({ exposeHeadRoutes: false });
  app.addHook("onRoute", ({ method, url }) => {
    for (const one of [method].flat()) found.push(`${one} ${url.replaceAll(/:(\w+)/g, "{$1}")}`);
  });
  await app.register(validationPlugin);
  await app.register(databasePlugin, { url: "postgresql://127.0.0.1:1/none" });
  for (const routes of allRoutes) await app.register(routes);
  await app.ready();
  await app.close();
  return found.sort();
}
