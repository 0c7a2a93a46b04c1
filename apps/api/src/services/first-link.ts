import { randomUUID } from "node:crypto";
import { linkPages } from "@cornerway/schema";
import { done, type Outcome } from "../outcome.ts";
import type { Database } from "../store/database.ts";
import { closeFirstLinks, firstLinkSince, insertLink, lockFirstLinks } from "../store/link-rows.ts";
import { countPeople } from "../store/person-rows.ts";
import { newSecret, secretHash } from "./secret.ts";

const linkLastsMs = 24 * 3_600_000;
/** Of several processes that start together one makes the link; whoever starts later makes a new one, and the old one ends. */
const togetherMs = 10_000;

/** The path of a link by which the first administrator comes; null where there are people, or another process just made one. */
export async function makeFirstLink(database: Database): Promise<string | null> {
  const made = await database.write(async (tx): Promise<Outcome<string | null>> => {
    await lockFirstLinks(tx);
    if ((await countPeople(tx)) > 0) return done(null);
    if (await firstLinkSince(tx, new Date(Date.now() - togetherMs))) return done(null);
    await closeFirstLinks(tx);
    const secret = newSecret();
    const expiresAt = new Date(Date.now() + linkLastsMs);
    await insertLink(tx, {
      ...{ id: randomUUID(), kind: "first-administrator", secretHash: secretHash(secret), expiresAt },
    });
    return done(`${linkPages["first-administrator"]}#${secret}`);
  });
  return made.ok ? made.value : null;
}
