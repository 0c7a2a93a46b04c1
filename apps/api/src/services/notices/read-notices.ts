import { concernsAny, mayReadEntry, recordKinds, type Notice, type Notices, type Role } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readHeld } from "../../store/membership-rows.ts";
import { findNoticed, readNoticeMark } from "../../store/notice-rows.ts";
import { readProjectIds, readProjectRow } from "../../store/project-rows.ts";
import { readEntriesNumbered } from "../../store/record-rows.ts";

/** Beyond this many projects nobody looks at one desk. */
const mostProjects = 200;
const mostOfProject = 50;
const mostInAll = 100;

/** Kinds of entries that someone with these roles may see and that concern them. */
export const noticedKinds = (roles: readonly Role[]) =>
  recordKinds.filter((kind) => mayReadEntry(roles, kind) && concernsAny(roles, kind));

/** What concerns someone in all their projects, the newest first. Counts up to fifty unseen of each. */
export async function readNotices(db: Connection, personId: string): Promise<Notices> {
  const ids = (await readProjectIds(db, personId, { after: undefined, limit: mostProjects })) ?? [];
  const all = (await Promise.all(ids.map((projectId) => noticesIn(db, projectId, personId)))).flat();
  const newest = all.toSorted((a, b) => b.entry.at.localeCompare(a.entry.at) || b.entry.number - a.entry.number);
  return { notices: newest.slice(0, mostInAll), unseen: all.filter(({ seen }) => !seen).length };
}

async function noticesIn(db: Connection, projectId: string, personId: string): Promise<Notice[]> {
  const { roles } = await readHeld(db, projectId, personId);
  const [{ name: projectName }, mark] = [
    await readProjectRow(db, projectId),
    await readNoticeMark(db, projectId, personId),
  ];
  const asked = { kinds: noticedKinds(roles), after: 0, limit: mostOfProject };
  const numbers = await findNoticed(db, { projectId, personId }, asked);
  const entries = await readEntriesNumbered(db, projectId, numbers);
  return entries.map((entry) => ({ projectId, projectName, entry, seen: entry.number <= mark.seen }));
}
