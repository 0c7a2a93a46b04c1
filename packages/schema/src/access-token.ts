import { z } from "zod";
import { TokenPrefix } from "./ids.ts";
import { Moment } from "./review.ts";
import type { Act } from "./roles.ts";
import { personLine } from "./text.ts";

/** What a script may do on someone's behalf. Never their account, their people, their answers or their stamp: by hand only. */
export const tokenScopes = ["read", "draw", "review"] as const;
export const TokenScope = z.enum(tokenScopes).meta({ id: "TokenScope" });
export type TokenScope = z.infer<typeof TokenScope>;

/** The scope an act needs when a token does it; an act that is not here is done by hand only. */
export const scopeOfAct: Partial<Record<Act, TokenScope>> = {
  "read-draft": "read",
  "read-revisions": "read",
  "read-record": "read",
  "read-people": "read",
  "read-prices": "read",
  draw: "draw",
  "send-revision": "draw",
  "answer-request": "draw",
  "write-note": "review",
  "settle-note": "review",
  "make-request": "review",
  "ask-question": "review",
  "meet-condition": "review",
};

export const AccessToken = z
  .strictObject({
    id: z.uuid(),
    name: z.string(),
    prefix: TokenPrefix,
    scopes: z.array(TokenScope),
    madeAt: Moment,
    expiresAt: Moment,
    lastUsedAt: Moment.nullable(),
    revokedAt: Moment.nullable(),
  })
  .meta({ id: "AccessToken" });
export type AccessToken = z.infer<typeof AccessToken>;

export const longestTokenDays = 365;

export const NewAccessToken = z
  .strictObject({
    name: personLine(80),
    scopes: z.array(TokenScope).min(1).max(tokenScopes.length),
    days: z.int().min(1).max(longestTokenDays),
  })
  .meta({ id: "NewAccessToken" });
export type NewAccessToken = z.infer<typeof NewAccessToken>;

/** `secret` is shown this once; null when the answer is given again under the same Idempotency-Key. */
export const AccessTokenMade = AccessToken.extend({ secret: z.string().nullable() }).meta({ id: "AccessTokenMade" });
export type AccessTokenMade = z.infer<typeof AccessTokenMade>;
