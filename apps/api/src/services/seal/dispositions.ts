import { digestOf, MarkDisposition, type MarkDispositionNow, type Revision, type Standing } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readPlainMatters } from "../../store/matter-rows.ts";
import type { Standings } from "../standings.ts";

/** The engineer's dispositions of marks, each with whether it stands against the newest revision. */
export async function readDispositions(
  db: Connection,
  projectId: string,
  { standings, newest }: { standings: Standings; newest: Revision },
): Promise<MarkDispositionNow[]> {
  const dispositions = await readPlainMatters(db, projectId, "disposition", MarkDisposition);
  return Promise.all(dispositions.map((disposition) => dispositionNow(disposition, { standings, newest })));
}

/** It stands while the very mark is there unchanged, and nothing that any of its elements covers has changed. */
export async function dispositionNow(
  disposition: MarkDisposition,
  { standings, newest }: { standings: Standings; newest: Revision },
): Promise<MarkDispositionNow> {
  const mark = newest.result?.marks.find(({ id }) => id === disposition.markId);
  const alike = mark !== undefined && digestOf(mark) === disposition.markDigest;
  const standing = await worst(
    mark?.elements ?? [],
    (id) => standings.of(id, disposition),
    () => standings.of(null, disposition),
  );
  return { disposition, stands: alike && standing.state === "stands", standing };
}

/** The first standing that is not the best; where no element is left, the one of the whole. */
async function worst(
  elements: readonly string[],
  of: (id: string) => Promise<Standing>,
  whole: () => Promise<Standing>,
): Promise<Standing> {
  const all = await Promise.all(elements.map(of));
  return all.find(({ state }) => state === "stale") ?? all.find(({ state }) => state === "waits") ?? all[0] ?? whole();
}
