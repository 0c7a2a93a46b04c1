import { AccessToken, AccessTokenMade, NewAccessToken } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import { z } from "zod";
import { described } from "../description/described.ts";
import { repeatableHeaders, repeatableOf } from "../description/repeatable.ts";
import { answer } from "../plugins/problems.ts";
import { signedInOf } from "../plugins/signed-in.ts";
import { makeToken, withdrawToken } from "../services/access-tokens.ts";
import { readTokens } from "../store/access-token-rows.ts";

const path = "/api/tokens";
const params = z.strictObject({ tokenId: z.uuid() });

const listing = described(
  {
    tag: "account",
    id: "listTokens",
    summary: "Your access tokens that are good",
    answers: { 200: z.array(AccessToken) },
  },
  {},
);

const making = described(
  {
    tag: "account",
    id: "makeToken",
    summary: "Make an access token for scripts",
    description: "Its secret is shown this once.",
    answers: { 201: AccessTokenMade },
    problems: ["too-many-kept", "key-reused"],
  },
  { headers: repeatableHeaders, body: NewAccessToken },
);

const withdrawing = described(
  {
    tag: "account",
    id: "withdrawToken",
    summary: "Withdraw an access token",
    answers: { 204: null },
    problems: ["not-found"],
  },
  { params },
);

export const tokenRoutes: FastifyPluginAsyncZod = async (app) => {
  app.get(path, { schema: listing }, async (request) =>
    readTokens(app.database.connection, signedInOf(request).person.id),
  );

  app.post(path, { schema: making }, async (request, reply) => {
    const { person } = signedInOf(request);
    return answer(reply, await makeToken(app.database, person, request.body, repeatableOf(request)), 201);
  });

  app.delete(`${path}/:tokenId`, { schema: withdrawing }, async (request, reply) => {
    const { person } = signedInOf(request);
    return answer(reply, await withdrawToken(app.database, person, request.params.tokenId), 204);
  });
};
