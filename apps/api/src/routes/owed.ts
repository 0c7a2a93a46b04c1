import { Owed } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { readOwed } from "../services/read-owed.ts";

const listing = described(
  {
    tag: "projects",
    id: "listOwed",
    summary: "Who owes whom what in your projects",
    description: "Open questions, conditions and change requests; what is needed first comes first.",
    answers: { 200: z.array(Owed) },
  },
  {},
);

export const owedRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get("/api/owed", { config: { scope: "read", byLink: true }, schema: listing }, async (request) =>
    readOwed(app.database.connection, signedInOf(request).person.id),
  );
};
