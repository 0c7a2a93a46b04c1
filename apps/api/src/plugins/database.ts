import fp from "fastify-plugin";
import { openDatabase, type Database } from "../store/database.ts";

declare module "fastify" {
  interface FastifyInstance {
    database: Database;
  }
}

export default fp(
  async (app, { url }: { url: string }) => {
    const database = openDatabase(url);
    app.decorate("database", database);
    app.addHook("onClose", () => database.close());
  },
  { name: "database" },
);
