import type { RecordEntry } from "@cornerway/schema";
import type { QueryClient } from "@tanstack/react-query";
import { projectKey, projectsKey } from "./project.ts";
import { recordKey } from "./record.ts";
import { readAgain } from "./read-again.ts";

/** What the live line brought, laid into the cache: the record grows, what it speaks of is read again. */
export function takeEntries(client: QueryClient, projectId: string, entries: readonly RecordEntry[]): void {
  if (entries.length === 0) return;
  client.setQueryData<RecordEntry[]>(recordKey(projectId), (known) => known && appended(known, entries));
  const settled = entries.some((entry) => entry.kind !== "drawn");
  if (!settled) return;
  void readAgain(client, { queryKey: projectsKey });
  void readAgain(client, {
    queryKey: projectKey(projectId),
    predicate: ({ queryKey }) => !queryKey.includes("record"),
  });
}

function appended(known: RecordEntry[], entries: readonly RecordEntry[]): RecordEntry[] {
  const last = known.at(-1)?.number ?? 0;
  return [...known, ...entries.filter((entry) => entry.number > last)];
}
