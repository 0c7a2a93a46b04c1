import { Thread } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { http } from "./http.ts";
import { projectKey } from "./project.ts";

export const threadKey = (projectId: string) => [...projectKey(projectId), "thread"] as const;
export const fetchThread = (projectId: string) => http(Thread, `/api/projects/${projectId}/thread`);
export const useThread = (projectId: string) =>
  useQuery({ queryKey: threadKey(projectId), queryFn: () => fetchThread(projectId) });
