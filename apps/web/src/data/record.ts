import { RecordEntry } from "@cornerway/schema";
import { queryOptions, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { http } from "./http.ts";
import { projectKey } from "./project.ts";

const pageSize = 200;

export const recordKey = (projectId: string) => [...projectKey(projectId), "record"] as const;

/** One page of the record after an entry number. */
export const fetchRecordPage = (projectId: string, after: number) =>
  http(z.array(RecordEntry), `/api/projects/${projectId}/record?after=${after}&limit=${pageSize}`);

/** The whole record this person may see, oldest first. */
export async function fetchRecord(projectId: string): Promise<RecordEntry[]> {
  const entries: RecordEntry[] = [];
  for (;;) {
    const page = await fetchRecordPage(projectId, entries.at(-1)?.number ?? 0);
    entries.push(...page);
    if (page.length < pageSize) return entries;
  }
}

const recordQuery = (projectId: string) =>
  queryOptions({ queryKey: recordKey(projectId), queryFn: () => fetchRecord(projectId) });

export const useRecord = (projectId: string) => useQuery(recordQuery(projectId));
