import { RecordEntry } from "@cornerway/schema";
import { queryOptions, useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, readPages } from "./api/client.ts";
import { projectKey } from "./project.ts";

export const recordKey = (projectId: string) => [...projectKey(projectId), "record"] as const;

/** The whole record this person may see, oldest first. */
export const fetchRecord = (projectId: string): Promise<RecordEntry[]> =>
  readPages(z.array(RecordEntry), (after) =>
    api.GET("/api/projects/{projectId}/record", { params: { path: { projectId }, query: { after } } }),
  );

const recordQuery = (projectId: string) =>
  queryOptions({ queryKey: recordKey(projectId), queryFn: () => fetchRecord(projectId) });

export const useRecord = (projectId: string) => useQuery(recordQuery(projectId));
