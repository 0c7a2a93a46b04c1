import { ProjectAuthority, type AuthorityProfile } from "@cornerway/schema";
import { useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const authorityKey = (projectId: string) => [...projectKey(projectId), "authority"] as const;
const at = (projectId: string) => ({ params: { path: { projectId } } });

/** How the authority wants a set that comes again marked and answered. */
export const useAuthority = (projectId: string) =>
  useQuery({
    queryKey: authorityKey(projectId),
    queryFn: () => read(ProjectAuthority, api.GET("/api/projects/{projectId}/authority", at(projectId))),
  });

export const useDescribeAuthority = (projectId: string) =>
  useMutation({
    mutationFn: (body: AuthorityProfile) =>
      read(ProjectAuthority, api.POST("/api/projects/{projectId}/authority", { ...at(projectId), body })),
    onSettled: (_profile, _error, _given, _kept, { client }) =>
      readAgain(client, { queryKey: authorityKey(projectId) }),
  });
