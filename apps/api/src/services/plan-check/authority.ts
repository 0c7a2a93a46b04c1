import { isDeepStrictEqual } from "node:util";
import { usualAuthority, type AuthorityProfile, type ProjectAuthority, type RecordEntry } from "@cornerway/schema";
import { done, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { readEntries } from "../../store/record-rows.ts";
import { actOf } from "../act-of.ts";
import { authorOf, type Part } from "../part.ts";

const mostEntries = 100_000;

/** The profile as the record has it; nothing else keeps it. */
export async function readAuthority(db: Connection, projectId: string): Promise<ProjectAuthority> {
  const kinds = ["authority described"] as const;
  const last = (await readEntries(db, projectId, { after: 0, limit: mostEntries, kinds })).at(-1);
  if (last?.payload?.kind !== "authority described") return { profile: usualAuthority, set: null };
  return { profile: last.payload.profile, set: { by: last.actor.name, at: last.at } };
}

/** The profile after all these entries. */
export function authorityIn(entries: readonly RecordEntry[]): AuthorityProfile {
  const last = entries.findLast(({ payload }) => payload?.kind === "authority described")?.payload;
  return last?.kind === "authority described" ? last.profile : usualAuthority;
}

/** Lays the profile down for the sets and replies to come. The same twice is written once. */
export function describeAuthority(
  database: Database,
  sender: Part,
  profile: AuthorityProfile,
): Promise<Outcome<ProjectAuthority>> {
  const { projectId } = sender;
  return actOf(database, sender, "keep-comments", async (tx, part) => {
    const now = await readAuthority(tx, projectId);
    if (now.set !== null && isDeepStrictEqual(now.profile, profile)) return done(now);
    const by = authorOf(part, "keep-comments");
    const { at } = await append(tx, projectId, by, () => ({ kind: "authority described", profile }));
    return done({ profile, set: { by: by.name, at } });
  });
}
