import { mayReadEntry, mostOfThread, type StampNow } from "@cornerway/schema";
import type { Connection } from "../store/connection.ts";
import { readLatestStamps } from "../store/stamp-rows.ts";
import type { Part } from "./part.ts";
import { Standings } from "./standings.ts";

/** The stamps of a project in the order they were pressed, each with whether it is still on what is there. */
export async function readStamps(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
): Promise<StampNow[]> {
  if (!mayReadEntry(roles, "stamp pressed")) return [];
  const standings = new Standings(db, projectId);
  const stamps = await readLatestStamps(db, projectId, mostOfThread);
  return Promise.all(
    stamps.map(async (stamp) => ({ stamp, standing: await standings.of(stamp.elementId ?? null, stamp) })),
  );
}
