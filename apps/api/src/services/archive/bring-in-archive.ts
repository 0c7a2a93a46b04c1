import type { Actor, ArchiveBroughtIn } from "@cornerway/schema";
import { readArchive, type WholeArchive } from "../../archive/project-archive.ts";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import { entryLeaf } from "../../record/entry-leaf.ts";
import { appendLeaf, treeHead } from "../../record/tree-head.ts";
import { insertBrought, type BroughtEntry } from "../../store/brought-in-rows.ts";
import type { Database } from "../../store/database.ts";
import { projectExists } from "../../store/new-project.ts";
import { insertRows, readProjectTables } from "../../store/project-tables.ts";
import { rowsOfArchive } from "./rows-of-archive.ts";

/**
 * Brings a project in from its archive, once the archive is found whole: with its record as it is, and one entry more that
 * says from where it came and who signed it. Nobody has a part in it until they are asked in. All of it or nothing.
 */
export async function bringInArchive(
  database: Database,
  by: Actor,
  sent: { bytes: Uint8Array; fingerprint?: string | undefined },
): Promise<Outcome<ArchiveBroughtIn>> {
  const { bytes, fingerprint } = sent;
  const found = await readArchive(bytes, fingerprint === undefined ? {} : { fingerprint });
  if (!found.whole) return refuse("archive-refused", { detail: found.faults.slice(0, 5).join("; ") });
  const { archive } = found;
  const tables = await readProjectTables(database.connection);
  const read = rowsOfArchive(archive, tables);
  if (!read.ok) return refuse("archive-refused", { detail: read.fault });
  const { project, head, keys } = archive.manifest;
  const { entries, frontier } = placed(archive);
  return database.act(project.id, async (tx) => {
    if (await projectExists(tx, project.id)) return refuse("project-here");
    await insertBrought(tx, { project, entries, frontier });
    for (const table of tables) await insertRows(tx, table, read.rows.get(table.name) ?? []);
    await append(tx, project.id, by, () => ({
      ...{ kind: "brought in", upTo: head.number, head, keys, archiveDigest: archive.digest },
    }));
    const { id: projectId, name } = project;
    return done({ projectId, name, entries: head.number, signedBy: head.fingerprint, signedAt: head.time });
  });
}

/** Every entry with its leaf and head, worked out anew. */
function placed({ bundle }: WholeArchive): { entries: BroughtEntry[]; frontier: string[] } {
  const entries: BroughtEntry[] = [];
  let frontier: string[] = [];
  for (const entry of bundle.entries) {
    if ("leaf" in entry) throw new RangeError("an archive that hides entries was let through");
    const { number, time, actor, role, kind, digest } = entry;
    const leaf = entryLeaf({ project: bundle.project, number, time, actor, role, kind, digest });
    frontier = appendLeaf(frontier, number - 1, leaf);
    entries.push({ ...entry, leaf, head: treeHead(frontier) });
  }
  return { entries, frontier };
}
