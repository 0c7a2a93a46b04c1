import type { RecordEntry } from "@cornerway/schema";
import { queryOptions, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read, readPages } from "./api/client.ts";
import { projectKey } from "./project.ts";

export const recordKey = (projectId: string) => [...projectKey(projectId), "record"] as const;

/** The shape of all that may be in a record, which no first screen waits for. */
async function entries() {
  const { RecordEntry } = await import("./record-shape.ts");
  return z.array(RecordEntry);
}

/** The whole record this person may see, oldest first. */
export const fetchRecord = async (projectId: string): Promise<RecordEntry[]> =>
  readPages(await entries(), (after) =>
    api.GET("/api/projects/{projectId}/record", { params: { path: { projectId }, query: { after } } }),
  );

/** Entries one looks back over on the desk; a week of a busy project has fewer. */
const tailLength = 200;

/** The end of a record, oldest first: at most one page. */
export const fetchRecordTail = async (projectId: string, last: number): Promise<RecordEntry[]> => {
  const query = { after: String(Math.max(0, last - tailLength)), limit: String(tailLength) };
  return read(await entries(), api.GET("/api/projects/{projectId}/record", { params: { path: { projectId }, query } }));
};

const recordQuery = (projectId: string) =>
  queryOptions({ queryKey: recordKey(projectId), queryFn: () => fetchRecord(projectId) });

export const useRecord = (projectId: string) => useQuery(recordQuery(projectId));
