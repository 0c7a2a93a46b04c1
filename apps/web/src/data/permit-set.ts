import { PermitSetRun, type AskForSet } from "@cornerway/schema";
import { useMutation, useQuery, type QueryClient } from "@tanstack/react-query";
import { z } from "zod";
import { api, read } from "./api/client.ts";
import { projectKey } from "./project.ts";
import { readAgain } from "./read-again.ts";

const setsKey = (projectId: string) => [...projectKey(projectId), "sets"] as const;
const at = (projectId: string) => ({ params: { path: { projectId } } });
const again = (client: QueryClient, projectId: string) => readAgain(client, { queryKey: setsKey(projectId) });

/** How often a set that is being printed is looked at, ms. */
const lookEveryMs = 1000;

/** The sets that were asked for, latest first; looked at again while one of them is on its way. */
export const useSets = (projectId: string) =>
  useQuery({
    queryKey: setsKey(projectId),
    queryFn: () => read(z.array(PermitSetRun), api.GET("/api/projects/{projectId}/sets", at(projectId))),
    refetchInterval: ({ state }) => (state.data?.some((set) => set.state === "waiting") ? lookEveryMs : false),
  });

export const useAskForSet = (projectId: string) =>
  useMutation({
    mutationFn: (body: AskForSet) =>
      read(PermitSetRun, api.POST("/api/projects/{projectId}/sets", { ...at(projectId), body })),
    onSettled: (_set, _error, _given, _kept, { client }) => again(client, projectId),
  });

export const useStopSet = (projectId: string) =>
  useMutation({
    mutationFn: (setId: string) =>
      read(
        PermitSetRun,
        api.POST("/api/projects/{projectId}/sets/{setId}/stop", { params: { path: { projectId, setId } }, body: {} }),
      ),
    onSettled: (_set, _error, _given, _kept, { client }) => again(client, projectId),
  });

export const setFile = (projectId: string, setId: string): string => `/api/projects/${projectId}/sets/${setId}/file`;
