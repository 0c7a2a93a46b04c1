import { randomBytes, randomUUID } from "node:crypto";
import { AccessTokenMade, type NewAccessToken } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import { countTokens, insertToken, revokeToken } from "../store/access-token-rows.ts";
import type { Database } from "../store/database.ts";
import type { Person } from "../store/person-rows.ts";
import type { Repeatable } from "../store/repeatable-rows.ts";
import { once } from "./once.ts";
import { secretHash } from "./secret.ts";

const mostTokens = 20;

/** Makes a token for scripts that act as someone. Its secret is in this answer and nowhere else. */
export function makeToken(
  database: Database,
  person: Person,
  { name, scopes, days }: NewAccessToken,
  repeatable: Repeatable | null,
): Promise<Outcome<AccessTokenMade>> {
  const withoutSecret = (made: AccessTokenMade): AccessTokenMade => ({ ...made, secret: null });
  return database.write((tx) =>
    once(tx, repeatable, { shape: AccessTokenMade, kept: withoutSecret }, async () => {
      if ((await countTokens(tx, person.id)) >= mostTokens) return refuse("too-many-kept");
      const prefix = `cw_${randomBytes(4).toString("hex")}`;
      const secret = `${prefix}_${randomBytes(32).toString("base64url")}`;
      const row = { id: randomUUID(), personId: person.id, name, prefix, secretHash: secretHash(secret) };
      return done({ ...(await insertToken(tx, { ...row, scopes: [...new Set(scopes)], days })), secret });
    }),
  );
}

/** Withdraws a token: its next use is refused. */
export const withdrawToken = (database: Database, person: Person, id: string): Promise<Outcome<void>> =>
  database.write(async (tx) => ((await revokeToken(tx, person.id, id)) ? done(undefined) : refuse("not-found")));
