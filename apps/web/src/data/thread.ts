import { Thread } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";

export const threadKey = (projectId: string) => [...projectKey(projectId), "thread"] as const;
export const fetchThread = (projectId: string) =>
  read(Thread, api.GET("/api/projects/{projectId}/thread", { params: { path: { projectId } } }));
export const useThread = (projectId: string) =>
  useQuery({ queryKey: threadKey(projectId), queryFn: () => fetchThread(projectId) });
