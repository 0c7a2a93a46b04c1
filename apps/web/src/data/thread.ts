import { ChangeRequest, mostOfThread, Note, Thread } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { z } from "zod";
import { api, read, readPages } from "./api/client.ts";
import { projectKey } from "./project.ts";

export const threadKey = (projectId: string) => [...projectKey(projectId), "thread"] as const;

/** Everything written, asked and decided; where a thread is full, its earlier notes and requests by their pages. */
export async function fetchThread(projectId: string): Promise<Thread> {
  const thread = await read(Thread, api.GET("/api/projects/{projectId}/thread", { params: { path: { projectId } } }));
  return {
    ...thread,
    notes: thread.notes.length < mostOfThread ? thread.notes : await fetchNotes(projectId),
    requests: thread.requests.length < mostOfThread ? thread.requests : await fetchRequests(projectId),
  };
}

const fetchNotes = (projectId: string): Promise<Note[]> =>
  readPages(z.array(Note), (after) =>
    api.GET("/api/projects/{projectId}/notes", { params: { path: { projectId }, query: { after } } }),
  );

const fetchRequests = (projectId: string): Promise<ChangeRequest[]> =>
  readPages(z.array(ChangeRequest), (after) =>
    api.GET("/api/projects/{projectId}/requests", { params: { path: { projectId }, query: { after } } }),
  );

export const useThread = (projectId: string) =>
  useQuery({ queryKey: threadKey(projectId), queryFn: () => fetchThread(projectId) });
